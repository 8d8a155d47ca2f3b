/** What a lesson says about the bench while it is being done. The lessons themselves are files of their own. */
export const lesson = {
  'lesson.within':
    '{reading} reads {value, number, ::.##} {unit}. Asked for are {aim, number, ::.###} {unit}, give or take {tolerance, number, ::.###}.',
  'lesson.atLeast':
    '{reading} reads {value, number, ::.##} {unit}. Asked for are at least {aim, number, ::.###} {unit}.',
  'lesson.atMost': '{reading} reads {value, number, ::.##} {unit}. Asked for are at most {aim, number, ::.###} {unit}.',
  'lesson.reading':
    '{what}{of, select, none {} other { of {of}}}{on, select, none {} other { on {on}}}{by, select, none {} other { by {by}}}{patch, select, none {} other { in the patch of {patch}}}{through, select, none {} other { through the {through} filter}}',
  'lesson.noReading': '{reading} cannot be read here: {problem}.',
  'lesson.order': 'The inks print in the order {now}. Asked for is {aim}.',
  'lesson.patch': 'The patch looked at is that of {now}. Asked for is the patch of {aim}.',
  'lesson.paper': 'The paper is {now}. Asked for is {aim}.',
  'lesson.kind': 'The press is {now}. Asked for is {aim}.',
  'lesson.waterless': 'The press is {now}. Asked for is {aim}.',
  'lesson.sheet': 'The sheet looked at is: {now}. Asked for is: {aim}.',
  'lesson.answer': 'That is not it yet.',
  'lesson.number': 'The bench reads something else. Asked for is this one: {reading}, on the bench as it stands now.',
  'lesson.otherNumber': 'The number you entered is another reading: {taken}. Asked for is this one: {reading}.',
} as const

export type LessonKey = keyof typeof lesson
