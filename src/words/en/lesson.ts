/** What a lesson says about the bench while it is being done. The lessons themselves are files of their own. */
export const lesson = {
  'lesson.within':
    '{reading} is {value, number, ::.##} {unit}, which is too {side, select, under {low} other {high}}: it has to be {aim, number, ::.###} {unit}{margin, select, small {} other {, give or take {tolerance, number, ::.###}}}.',
  'lesson.atLeast':
    '{reading} is {value, number, ::.##} {unit}, which is too low: it has to be at least {aim, number, ::.###} {unit}.',
  'lesson.atMost':
    '{reading} is {value, number, ::.##} {unit}, which is too high: it has to be at most {aim, number, ::.###} {unit}.',
  'lesson.notAfter': 'For {reading}, {later} has to print after {earlier}. On the bench it prints before.',
  'lesson.notOnPress': 'For {reading}, {missing} has to be on the press. It is not.',
  'lesson.noColour': 'The bench cannot give {reading}: it does not know the colour of an ink of this patch.',
  'lesson.noFilm': 'The bench cannot give {reading}: no film of that ink can give way there.',
  'lesson.noApparentTrap': 'The bench cannot give {reading}: the densities of these patches tell none.',
  'lesson.order': 'The inks print in the order {now}. They have to print in the order {aim}.',
  'lesson.patch':
    'Now {now} {printing, plural, one {prints} other {print}} in the patch you look at. Choose the patch in which {asked, plural, one {only {aim} prints} other {{aim} print}}.',
  'lesson.paper': 'The paper is {now}. It has to be {aim}.',
  'lesson.kind': 'The press is {now}. It has to be {aim}.',
  'lesson.waterless': 'The press is {now}. It has to be {aim}.',
  'lesson.sheet': 'The sheet looked at is: {now}. It has to be: {aim}.',
  'lesson.answer': 'That is not it yet.',
  'lesson.sequence':
    '{right, plural, =0 {The one on top does not belong there yet.} one {The one on top is right. Look again at what comes after it.} other {The first # are right. Look again at what comes after them.}}',
  'lesson.proof':
    'You have the cause.{surplus, plural, =0 {} one { One of the pieces you ticked is as it should be, and so proves nothing.} other { # of the pieces you ticked are as they should be, and so prove nothing.}}{missing, plural, =0 {} one { One piece that proves it is missing.} other { # pieces that prove it are missing.}}',
  'lesson.number': 'The bench shows another number for {reading}. Read it once more, with the bench as it stands now.',
  'lesson.inPercent':
    'Your number is a share of one. The question asks for {reading} in percent, as the bench shows it.',
  'lesson.otherNumber': 'The number you entered is {taken}. The question is about {reading}.',

  'lesson.reading.massTrap': 'the mass trap of {of} on {on}',
  'lesson.reading.film':
    'the film of {of} {alone, select, yes {where it prints alone} other {in the patch of {patch}}}',
  'lesson.reading.lifted': 'the part of the {of} that the {by} lifts',
  'lesson.reading.picked': 'the picked part of the paper{patch, select, none {} other { in the patch of {patch}}}',
  'lesson.reading.contamination': 'the contamination of the unit of {of}',
  'lesson.reading.pull': 'the pull of the film of {of} at the unit of {by}, in the patch of {patch}',
  'lesson.reading.gaveWay':
    'the share of spots in which the {of} gave way at the unit of {by}, in the patch of {patch}',
  'lesson.reading.torn': 'the share of spots in which the paper tore at the unit of {by}, in the patch of {patch}',
  'lesson.reading.brought': 'the film of {of} on its blanket, in the patch of {patch}',
  'lesson.reading.takenUp': 'what the blanket of {by} takes up, in the patch of {patch}',
  'lesson.reading.givenBack': 'what the blanket of {by} gives back, in the patch of {patch}',
  'lesson.reading.density': 'the density of the patch of {patch} through the {through} filter',
  'lesson.reading.apparentTrap': 'the apparent trap of {of} on {on}',
  'lesson.reading.tack': 'the tack of {of}',
  'lesson.reading.formRollerFilm': 'the film of {of} on the form roller',
  'lesson.reading.coverage': 'the coverage of {of}',
  'lesson.reading.temperature': 'the temperature of the unit of {of}',
  'lesson.reading.dampening': 'the dampening of the unit of {of}',
  'lesson.reading.speed': 'the speed of the press',
  'lesson.reading.interval': 'the time between units',
  'lesson.reading.surfaceStrength': 'the surface strength of the paper',
} as const

export type LessonKey = keyof typeof lesson
