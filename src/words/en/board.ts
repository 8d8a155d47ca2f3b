/** The instructor's board: results handed in, read and counted; and the file a learner hands in. */
export const board = {
  'board.title': 'A class at a glance',
  'board.lead':
    'Put the result files of your learners here and see where the class stands. The files are read in this browser and go nowhere; when the page is closed, nothing of them is kept.',
  'board.choose': 'Choose result files',
  'board.chooseFolder': 'Choose a folder',
  'board.orDrop': 'Or drop files or a folder on this frame.',
  'board.kinds':
    'Result files (.json) as learners save them; and statements (xAPI) exported from a record store, as JSON or as CSV with the columns timestamp, actor.account.name, verb.id, object.id, result.response, result.success, result.score.scaled, result.duration. Capitals, blanks and strokes in the headings (Verb/ID) make no difference; success is true or false, 1 or 0, yes or no.',
  'board.reading': 'Reading {read} of {all}',
  'board.cancel': 'Stop reading',
  'board.cancelled': 'Stopped after {read} of {all} files. What was read is counted.',
  'board.done':
    '{learners, plural, one {# learner} other {# learners}} from {files, plural, one {# file} other {# files}}.',
  'board.clear': 'Put all away',
  'board.none': 'None of the files could be read.',

  'board.filter': 'What is shown',
  'board.group': 'Group',
  'board.allGroups': 'All groups',
  'board.noGroup': 'Without a group',
  'board.lesson': 'Lesson',
  'board.allLessons': 'All lessons',
  'board.courseLesson': '{number}. {title}',
  'board.ownLesson': '{title} (of its own)',

  'board.lessons': 'Lessons',
  'board.began': 'Began',
  'board.finished': 'Finished',
  'board.scoreLeast': 'Lowest score',
  'board.scoreMiddle': 'Middle score',
  'board.scoreMost': 'Highest score',
  'board.timeMiddle': 'Middle time',
  'board.timeMost': 'Longest time',
  'board.minutes': 'min',
  'board.scoreIs':
    'Score: the share of tasks met at the first go without a hint. Scores and times are of those who finished; time counts only while the page was visible.',
  'board.spread': 'Scores',
  'board.spreadWords':
    'Scores from {least} to {most} %; the middle half from {lower} to {upper} %, the middle one {middle} %.',
  'board.spreadIs': 'Line: lowest to highest score; box: the middle half of the class; stroke: the middle one.',

  'board.steps': 'Step by step: {title}',
  'board.stepsChoose': 'Choose one lesson above to see its steps and the wrong answers given.',
  'board.step': 'Step',
  'board.stepName': '{number}. {kind}: {id}',
  'board.reached': 'Reached',
  'board.stepDone': 'Done',
  'board.firstGo': 'At the first go',
  'board.wrong': 'Wrong answers',
  'board.wrongNone': 'No wrong answer was handed in.',
  'board.wrongBy': '{count, plural, one {# learner} other {# learners}}',
  'board.wrongRest': '{count, plural, one {One more answer} other {# more answers}}, each rarer than these.',
  'board.answer.order': 'In the order: {order}',
  'board.answer.reading': 'Typed about {value} {unit}',
  'board.answer.foreseen': 'Typed from {from} to {to} {unit}',
  'board.answer.diagnosis': '{cause}. Proof named: {because}',
  'board.answer.bench': 'The bench did not show what was asked for',
  'board.feedback': 'What the lesson says to it:',
  'board.noFeedback': 'The lesson has no words for it.',

  'board.causes': 'Fault drills',
  'board.noDrills': 'No drill is in these results.',
  'board.causesAre':
    'By the cause that was hidden, and what was named at the first answer. Found: the cause was named; proven: the whole answer was right and its evidence ruled out everything else.',
  'board.cause': 'Hidden cause',
  'board.drills': 'Drills',
  'board.hit': 'Found',
  'board.proven': 'Proven',
  'board.provenCount': 'Proven drills',
  'board.confusion': 'Taken for something else',
  'board.confusionIs':
    'How often a cause (down) was taken for another that was not there (across). The same name down and across: the right kind at the wrong unit.',
  'board.hidden': 'Hidden',
  'board.cause.order swapped': 'Two inks swapped',
  'board.cause.tack too high': 'Tack too high',
  'board.cause.tack too low': 'Tack too low',
  'board.cause.film too heavy': 'Film too heavy',
  'board.cause.film too thin': 'Film too thin',
  'board.cause.water too high': 'Too much water',
  'board.cause.unit too warm': 'Unit too warm',
  'board.cause.paper weak': 'Weak paper',
  'board.cause.paper too closed': 'Closed paper',
  'board.cause.speed too high': 'Speed too high',
  'board.cause.interval too short': 'Interval too short',
  'board.cause.soiled unit': 'Soiled unit',

  'board.learners': 'Learners',
  'board.learner': 'Learner',
  'board.left': 'Still to do',
  'board.score': 'Mean score',
  'board.time': 'Time',
  'board.made': 'Handed in as of',
  'board.nameless': 'No name ({id})',
  'board.namesake': '{name} ({id})',
  'board.fromTo': '{first} to {last}',
  'board.leftIs':
    'Whoever has finished least, and then scored lowest, stands first: they may need help. Still to do: numbers of the lessons as the course has them.',

  'board.again':
    '{count, plural, one {One learner} other {# learners}} handed in more than once; the newest result counts.',
  'board.againFiles': '{name}: {count} results, the newest of {made}',
  'board.sameBrowser':
    '{count, plural, one {One browser} other {# browsers}} handed in under several names; each name counts as a learner.',
  'board.passedOver':
    '{count, plural, one {One statement told} other {# statements told}} nothing of a lesson or drill of this program and {count, plural, one {was} other {were}} passed over.',
  'board.refused': '{count, plural, one {One file} other {# files}} could not be read',
  'board.file': 'File',
  'board.why': 'Why not',

  'board.saveCsv': 'Save as CSV',
  'board.print': 'Print',
  'board.sortBy': 'Sort by {column}',
  'board.open': 'See a class’s results',
  'board.openIs': 'For instructors: who has done what, from the result files of the learners.',

  'board.handIn': 'Hand in your results',
  'board.handInIs':
    'The result file holds all your lessons and drills: what you answered, right and wrong, the hints you took, and the time you were at it. It is saved on this computer, and you give it to whoever asks for it.',
  'board.groupName': 'Class or group, if you have one',
  'board.handInAt': 'Hand in: the result file, with lessons and drills, is saved below the list of lessons.',
  'board.fileName': 'Results {name}',
  'board.handInSave': 'Save the result file',

  'board.refused.large': 'The file has {size} MB; allowed are {most} MB.',
  'board.refused.unreadable': 'The browser could not read the file.',
  'board.refused.long': 'The file has {length} characters; allowed are {most}.',
  'board.refused.noJson': 'This is no result file: it is not JSON.',
  'board.refused.format': 'This is no result file of this program.',
  'board.refused.version': 'There has been no such version of the result file.',
  'board.refused.newer':
    'The file is of version {version}, made by a newer version of this program; this one reads up to version {most}.',
  'board.refused.statements': 'No statement of this program is in the file.',
  'board.refused.field': 'A value is missing or not allowed: {field}.',
} as const

export type BoardKey = keyof typeof board
