/** Packages for learning systems, and what the page says while one of them has launched it. */
export const learningSystem = {
  'system.title':
    'Tackstair: {count, plural, =0 {fault drills} one {{first}} other {# lessons on the order of the inks}}',
  'system.description':
    'An interactive bench on which inks are printed on wet inks. {lessons, plural, =0 {} one {One lesson. } other {# lessons. }}{drills, plural, =0 {} one {One fault drill. } other {# fault drills. }}A teaching model: do not set a press from it.',
  'system.drill': 'Fault drill {number}',
  'system.asksOfDrill': 'What is wrong with this job, and what proves it?',
  'system.readme':
    "Tackstair for a learning system ({standard}).\n\nUpload this zip, unopened, to the learning system as a package of that standard. It runs on the learner's own computer and sends its results to that system and nowhere else.\n\nIt holds:\n{list}\n\n{mastery}\n\nOpened by itself, {page} is the plain page, with everything in it.\n",
  'system.readmeMastery':
    'Pass mark: {percent}. The score is the share of questions met at the first go without a hint.',
  'system.readmeNoMastery': 'It has no pass mark: it is completed once everything in it is done.',

  'system.here': 'Your results go to the learning system that opened this page, and nowhere else.',
  'system.hereLooking':
    'The learning system has opened this page to look round. Nothing of it counts, and no results are sent.',
  'system.state.opening': 'Waiting for the learning system.',
  'system.state.saving': 'Sending.',
  'system.state.saved': 'Everything has arrived there.',
  'system.state.waiting':
    'The learning system does not answer at present. Your work is kept {where, select, browser {in this browser} other {in this page}} and is sent again by itself.',
  'system.state.closed':
    'This visit is over for the learning system. What you do now is kept {where, select, browser {in this browser and sent when you open the page from there again} other {in this page only; download your results}}.',
  'system.state.ended': 'The visit has ended. You can close this page.',
  'system.leftOut.benches': 'It has little room: how you left the benches of other lessons is not kept there.',
  'system.leftOut.tries': 'It has little room: benches of other lessons and single tries are not kept there.',
  'system.leftOut.old answers':
    'It has little room: benches, single tries and answers of other lessons are not kept there.',
  'system.leftOut.open bench': 'It has little room: benches, single tries and older answers are not kept there.',
  'system.leftOut.all answers': 'It has little room: your place and your results are kept there, not your answers.',
  'system.leftOut.old drills': 'It has little room: your place, results and latest drills are kept there.',
  'system.leftOut.counts': 'It has little room: only your place and your results are kept there.',
  'system.tryNow': 'Send now',
  'system.download': 'Download results',
  'system.end': 'End this visit',
  'system.label': 'Learning system',

  'system.aside.title':
    '{count, plural, =0 {No earlier attempt is kept} one {Answers of an earlier attempt have not arrived} other {Answers of # earlier attempts have not arrived}}',
  'system.aside.is':
    'The learning system has begun a new attempt and takes no more of the old one. {where, select, browser {Your work of then is kept in this browser for {days} days} other {Your work of then is kept in this page only}}: save it as a result file for your instructor, or remove it.',
  'system.aside.crowdedOut':
    'The oldest, of {moment}, goes when this page is closed: no more than {most} are kept. Save it now if you need it.',
  'system.aside.of': '{moment}: {answers, plural, one {one answer} other {# answers}} not sent',
  'system.aside.drills': '{count, plural, one {one fault drill} other {# fault drills}}',
  'system.aside.save': 'Save as a result file',
  'system.aside.remove': 'Remove',
  'system.aside.removed': 'Removed: the attempt of {moment}.',
  'system.aside.putBack': 'Put it back',

  'system.pack': 'Package for a learning system',
  'system.packHow':
    'A zip file to be uploaded to a learning system. It holds this page, the lessons and drills you choose, and tells the system how far each learner has come. It is made here, and nothing is sent.',
  'system.standard': 'Standard',
  'system.standard.scorm-1.2': 'SCORM 1.2 (nearly every system)',
  'system.standard.scorm-2004': 'SCORM 2004, 4th edition',
  'system.standard.cmi5': 'cmi5 (with a learning record store)',
  'system.lessons': 'Lessons',
  'system.drills': 'Fault drills',
  'system.mastery': 'Pass mark in percent; empty for none',
  'system.make': 'Make the package',
  'system.made': 'The package has been made.',
  'system.nothing': 'Choose a lesson, or at least one fault drill.',
  'system.drillsAllowed': '{given} is not allowed; allowed are whole numbers from 0 to {most}.',
  'system.masteryAllowed': '{given} is no pass mark; allowed are numbers from 0 to 100, or nothing.',
  'system.noFile':
    'The package needs the page in one file, and none stands beside this page. Put tackstair.html (npm run build:file) next to it, or open that file and make the package there.',
} as const
