/** Every kind of fault in a lesson file gives its own message at its own place. */
import { describe, expect, test } from 'vitest'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import { changed, everyday, placeIn, soundLesson } from './sound-lesson.ts'

interface Fault {
  name: string
  from: string
  to: string
  /** where the problem is to be found: the first place of this piece in the changed file */
  at: string
  message: RegExp
}

const faults: Fault[] = [
  {
    name: 'format of the future',
    from: 'format: 1',
    to: 'format: 2',
    at: '2',
    message: /format 2 is newer than this program.*format 1/,
  },
  {
    name: 'format that is none',
    from: 'format: 1',
    to: 'format: old',
    at: 'old',
    message: /"old" is no format; allowed is 1/,
  },
  {
    name: 'unknown field of the lesson',
    from: 'minutes: 5',
    to: 'minutes: 5\nminute: 5',
    at: 'minute: 5',
    message: /"minute" is no field of a lesson; did you mean minutes\?; allowed are format, id/,
  },
  {
    name: 'missing field',
    from: 'audience: Testers\n',
    to: '',
    at: 'format',
    message: /"audience" is missing; a lesson needs it/,
  },
  {
    name: 'field given twice',
    from: 'minutes: 5',
    to: 'minutes: 5\nminutes: 6',
    at: 'minutes: 6',
    message: /given twice/,
  },
  { name: 'minutes that are no number', from: 'minutes: 5', to: 'minutes: soon', at: 'soon', message: /from 1 to 120/ },
  {
    name: 'id with blanks',
    from: 'id: small-lesson',
    to: 'id: Small Lesson',
    at: 'Small',
    message: /"Small Lesson" is no id; allowed are small letters and digits/,
  },
  {
    name: 'language that is no tag',
    from: 'language: en',
    to: 'language: English',
    at: 'English',
    message: /"English" is no language; allowed are tags such as en, es or pt-BR/,
  },
  {
    name: 'own term that the glossary has',
    from: 'objectives:',
    to: 'glossary:\n  - { id: mottle, term: clouds, sentence: It looks cloudy. }\nobjectives:',
    at: 'mottle',
    message: /mottle is in the program's glossary already/,
  },
  {
    name: 'own term whose word is taken',
    from: 'objectives:',
    to: 'glossary:\n  - { id: clouds, term: clouds, forms: [mottled], sentence: It looks cloudy. }\nobjectives:',
    at: '{ id: clouds',
    message: /"mottled" is a word of mottle already/,
  },
  {
    name: 'own term used before it is explained',
    from: 'objectives:',
    to: 'glossary:\n  - { id: tester, term: tester, forms: [testers], sentence: One who tries. }\nobjectives:\n  - Be testers.',
    at: 'testers.',
    message: /"testers" \(tester\) is used before it is explained/,
  },
  {
    name: 'unknown caution',
    from: '[teaching-model]',
    to: '[teaching-modle]',
    at: 'teaching-modle',
    message: /is no caution; allowed are .*; did you mean teaching-model\?/,
  },
  {
    name: 'unknown control',
    from: 'show: [tack,',
    to: 'show: [tacks,',
    at: 'tacks',
    message: /"tacks" is no control.*did you mean tack\?/,
  },
  {
    name: 'locked but hidden control',
    from: 'lock: [order]',
    to: 'lock: [speed]',
    at: 'speed',
    message: /speed is locked but not shown/,
  },
  {
    name: 'set-up out of range',
    from: '{ name: cyan, tack: 13 }',
    to: '{ name: cyan, tack: 130 }',
    at: '130',
    message: /inks\[0\]\.tack 130 is not allowed; allowed are numbers from 2 to 40 tack units/,
  },
  {
    name: 'unknown kind of step',
    from: 'kind: predict',
    to: 'kind: predikt',
    at: 'predikt',
    message: /"predikt" is no kind of step; allowed are say, predict, do, expect; did you mean predict\?/,
  },
  {
    name: 'unknown field of a step',
    from: '    hints: [Lower it.]',
    to: '    hint: [Lower it.]',
    at: 'hint:',
    message: /"hint" is no field of an expect step; did you mean hints\?/,
  },
  {
    name: 'text that is empty',
    from: 'text: Type the film.',
    to: "text: ' '",
    at: "' '",
    message: /is empty; allowed are words/,
  },
  {
    name: 'id of a step given twice',
    from: 'id: look',
    to: 'id: number',
    at: 'number\n    kind: do',
    message: /the id number is given twice/,
  },
  {
    name: 'right answer that is no choice',
    from: 'right: more',
    to: 'right: mor',
    at: 'mor\n',
    message: /mor is no choice of this step; allowed are more, less; did you mean more\?/,
  },
  {
    name: 'prediction settled by no step',
    from: 'settledBy: lower',
    to: 'settledBy: lover',
    at: 'lover',
    message: /lover is no later do or expect step; .*did you mean lower\?/,
  },
  {
    name: 'prediction settled by a step before it',
    from: 'settledBy: lower',
    to: 'settledBy: what',
    at: 'what\n  - id: lower',
    message: /what is no later do or expect step/,
  },
  {
    name: 'prediction settled by a step that shows nothing',
    from: 'settledBy: lower',
    to: 'settledBy: look',
    at: 'look',
    message: /look shows nothing that could settle this; let it expect or claim a reading off the sheet/,
  },
  {
    name: 'sheet after a unit that the press does not have',
    from: '    text: Type the film.',
    to: '    text: Type the film.\n    sheetAfter: 3',
    at: '3\n    expect',
    message: /there is no unit 3 on this press; allowed are 1 to 2/,
  },
  {
    name: 'sheet at two places',
    from: '    text: Type the film.',
    to: '    text: Type the film.\n    sheetAfter: 2\n    sheetIn: 1',
    at: '1\n    expect',
    message: /the sheet is after a unit or in its nip; keep one of them/,
  },
  {
    name: 'unknown reading',
    from: 'reading: { what: film, of: magenta, in: [cyan, magenta] }\n',
    to: 'reading: { what: films, of: magenta, in: [cyan, magenta] }\n',
    at: 'films',
    message: /"films" is no kind of reading; allowed are mass trap, film.*did you mean film\?/,
  },
  {
    name: 'reading without its ink',
    from: 'reading: { what: film, of: magenta, in: [cyan, magenta] }\n',
    to: 'reading: { what: film, in: [cyan, magenta] }\n',
    at: '{ what: film',
    message: /"of" is missing; the reading film needs it/,
  },
  {
    name: 'wrong unit',
    from: '        unit: um',
    to: "        unit: '%'",
    at: "'%'",
    message: /film is read in um, not in %/,
  },
  {
    name: 'unknown unit',
    from: '        unit: um',
    to: '        unit: inch',
    at: 'inch',
    message: /"inch" is no unit; allowed are %, um/,
  },
  {
    name: 'ink that is not on the press',
    from: 'in: [cyan, magenta] }\n        value',
    to: 'in: [cyan, yellow] }\n        value',
    at: 'is: at least\n        reading',
    message: /no ink is called yellow; on the press are cyan, magenta/,
  },
  {
    name: 'two questions in one step',
    from: '    done: Well done.',
    to: '      - { is: number, reading: { what: picked }, tolerance: 1, unit: "%" }\n    done: Well done.',
    at: 'id: why',
    message: /a step asks one question at most/,
  },
  {
    name: 'expectation that is already true',
    from: 'value: 0.8\n',
    to: 'value: 0.5\n',
    at: '- is: at least\n        reading',
    message: /already true before the learner has done anything/,
  },
  {
    name: 'number typed that the bench does not read',
    from: 'enter: 0.86',
    to: 'enter: 0.5',
    at: '{ is: number',
    message: /is not reached by the solution: film of magenta in the patch of cyan, magenta reads 0\.8\d um/,
  },
  {
    name: 'items already in order',
    from: 'right: [first, second, third]',
    to: 'right: [second, first, third]',
    at: '- { id: second, text: Second }',
    message: /already stand in the right order/,
  },
  {
    name: 'order that leaves an item out',
    from: 'right: [first, second, third]',
    to: 'right: [first, second, first]',
    at: '[first, second, first]',
    message: /right names every item of this step exactly once/,
  },
  {
    name: 'solution for a step that is none',
    from: '- { step: look, changes',
    to: '- { step: lock, changes',
    at: 'lock, changes',
    message: /lock is no step; .*did you mean look\?/,
  },
  {
    name: 'solution of one step twice',
    from: '  - { step: number, enter: 0.86 }',
    to: '  - { step: number, enter: 0.86 }\n  - { step: number, enter: 0.87 }',
    at: 'number, enter: 0.87',
    message: /number is solved twice/,
  },
  {
    name: 'solution with the wrong answer',
    from: 'choose: more',
    to: 'choose: less',
    at: 'less }',
    message: /less is not the right answer of guess, which is more/,
  },
  {
    name: 'solution that leaves a prediction out',
    from: '  - { step: guess, choose: more }\n',
    to: '',
    at: 'guess',
    message: /does not choose an answer for the prediction guess/,
  },
  {
    name: 'solution by a locked control',
    from: '{ step: look, changes: [{ change: patch, to: [cyan] }] }',
    to: '{ step: look, changes: [{ change: order, of: cyan, to: 2 }, { change: patch, to: [cyan] }] }',
    at: '{ change: order',
    message: /order is hidden or locked in this lesson/,
  },
  {
    name: 'solution that loads a set-up',
    from: '[{ change: patch, to: [cyan] }] }',
    to: '[{ change: patch, to: [cyan] }, { change: set-up, to: { inks: [{ name: cyan, tack: 9 }, { name: a, tack: 9 }] } }] }',
    at: '{ change: set-up',
    message: /a whole set-up is loaded by the lesson/,
  },
  {
    name: 'change out of range',
    from: 'to: 16 }]',
    to: 'to: 60 }]',
    at: '60',
    message: /60 is no tack; allowed are numbers from 2 to 40/,
  },
  {
    name: 'feedback whose mistake is none',
    from: 'value: 14, unit: tack units }',
    to: 'value: 9, unit: tack units }',
    at: '{ is: at least, reading: { what: tack',
    message: /also holds when the step is solved/,
  },
  {
    name: 'feedback that never comes',
    from: 'after: [{ change: tack, of: magenta, to: 16 }]',
    to: 'after: [{ change: tack, of: magenta, to: 11 }]',
    at: '{ is: at least, reading: { what: tack',
    message: /does not hold after these changes: tack of magenta reads 11\.00 tack units/,
  },
  {
    name: 'claim that is not so',
    from: '    done: Well done.',
    to: '    claims: [{ is: within, reading: { what: mass trap, of: magenta, on: cyan }, value: 100, tolerance: 1, unit: "%" }]',
    at: '{ is: within',
    message: /is not so: mass trap of magenta on cyan reads \d\d\.\d\d %/,
  },
  {
    name: 'trap of the earlier ink on the later',
    from: '    done: Well done.',
    to: '    claims: [{ is: at least, reading: { what: mass trap, of: cyan, on: magenta }, value: 1, unit: "%" }]',
    at: '{ is: at least, reading: { what: mass',
    message: /cyan does not print after magenta, so no trap can be read/,
  },
  {
    name: 'term used before it is explained',
    from: 'title: A small lesson',
    to: 'title: A small lesson on picking',
    at: 'picking',
    message: /"picking" \(picking\) is used before it is explained.*list picking under assumes/,
  },
  {
    name: 'inflection of a term not explained',
    from: 'A low tack gives way.',
    to: 'A low tack gives way\n      and is lifted off.',
    at: 'lifted',
    message: /"lifted" \(lifting\) is used before/,
  },
  {
    name: 'term used before its own explanation in the same text',
    from: 'How strongly an ink resists is its',
    to: 'Tacky things resist, and this is',
    at: 'Tacky',
    message: /"Tacky" \(tack\) is used before/,
  },
  {
    name: 'explained term that is not in bold',
    from: '**tack**',
    to: 'stickiness',
    at: 'tack]\n  - id: guess',
    message: /tack is to be explained here, but \*\*tack\*\* does not stand in bold/,
  },
  {
    name: 'explained but not introduced',
    from: 'introduces: [tack]\n',
    to: '',
    at: 'tack]\n  - id: guess',
    message: /tack is explained here but not listed under introduces/,
  },
  {
    name: 'introduced but never explained',
    from: 'introduces: [tack]',
    to: 'introduces: [tack, picking]',
    at: 'picking',
    message: /picking is introduced, but no step lists it under explains/,
  },
  {
    name: 'term that is not in the glossary',
    from: 'introduces: [tack]',
    to: 'introduces: [tack, tak]',
    at: 'tak]',
    message: /tak is no term of the glossary; did you mean tack\?/,
  },
  {
    name: 'assumed term that is never used',
    from: 'assumes: [overprint,',
    to: 'assumes: [overprint, mottle,',
    at: 'mottle',
    message: /mottle is assumed but never used/,
  },
  {
    name: 'term of the glossary sentence not known',
    from: '    explains: [tack]',
    to: '    explains: [tack]\n  - id: more\n    kind: say\n    text: This is **picking** and **lifting**.\n    explains: [lifting]',
    at: 'lifting]',
    message: /the glossary explains lifting by "blanket" \(blanket\), which is not explained yet/,
  },
  {
    name: 'markup in Markdown',
    from: 'Type the film.',
    to: 'Type <script>alert(1)</script> the film.',
    at: '<script>',
    message: /markup such as <script> is not allowed; write Markdown/,
  },
  {
    name: 'image in Markdown',
    from: 'Type the film.',
    to: "'Type ![x](https://example.org/a.png) the film.'",
    at: '![x]',
    message: /an image is not allowed/,
  },
  {
    name: 'link that runs a script',
    from: 'Type the film.',
    to: "'Type [it](javascript:alert(1)) the film.'",
    at: '[it]',
    message: /a link to javascript:alert\(1\) is not allowed/,
  },
  {
    name: 'handout figure of no step',
    from: 'solution:',
    to: 'handout:\n  figures: [{ step: lowr, caption: See. }]\n  blanks: [{ ask: What?, answer: That. }]\nsolution:',
    at: 'lowr',
    message: /lowr is no step; .*did you mean lower\?/,
  },
]

test('the lesson these faults are put into is sound', () => {
  expect(checkLesson(soundLesson, { everyday }).problems).toEqual([])
})

describe('a faulty lesson names its fault and its place', () => {
  test.each(faults)('$name', ({ from, to, at, message }) => {
    const text = changed(from, to)
    const { problems } = checkLesson(text, { everyday })
    expect(problems.map((problem) => problem.message).join('\n')).toMatch(message)
    const found = problems.find((problem) => message.test(problem.message))
    expect(found && { line: found.line, col: found.col }).toEqual(placeIn(text, at))
  })
})
