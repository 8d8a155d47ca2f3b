/** What a learner is told about the bench: its own figure, what was asked for, and no answer given away. */
import { expect, test } from 'vitest'
import { benchOf } from '../../src/lesson/bench.ts'
import type { BenchExpectation, Question } from '../../src/lesson/expectation.ts'
import { judgeBench, judgeStep } from '../../src/lesson/judge.ts'
import { read } from '../../src/lesson/reading.ts'
import { sayFinding } from '../../src/lesson/said.ts'
import type { AskedStep } from '../../src/lesson/step.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { say } from '../../src/ui/say.ts'
import { inWords } from '../../src/ui/lessons/reading-words.ts'

const checked = checkSetUp({
  inks: [
    { name: 'cyan', tack: 13, coverage: 0.706 },
    { name: 'magenta', tack: 12.5 },
    { name: 'yellow', tack: 10 },
  ],
})
if ('problems' in checked) throw new Error('refused')
const bench = benchOf(checked.setUp)

function sentence(finding: Parameters<typeof sayFinding>[0]): string {
  const { message, values } = sayFinding(finding, bench)
  // Units are kept with their numbers by blanks that do not break.
  return say(message, inWords(values, finding)).replaceAll('\u00a0', ' ')
}

const tack = { what: 'tack', of: 'magenta' } as const

test.each<[BenchExpectation, string]>([
  [
    { is: 'within', reading: tack, value: 10, tolerance: 0.5, unit: 'tack units' },
    'the tack of magenta is 12.5 tack units, which is too high: it has to be 10 tack units, give or take 0.5.',
  ],
  [
    { is: 'within', reading: tack, value: 13, tolerance: 0.01, unit: 'tack units' },
    'the tack of magenta is 12.5 tack units, which is too low: it has to be 13 tack units.',
  ],
  [
    { is: 'at least', reading: tack, value: 14, unit: 'tack units' },
    'the tack of magenta is 12.5 tack units, which is too low: it has to be at least 14 tack units.',
  ],
  [
    { is: 'at most', reading: tack, value: 9, unit: 'tack units' },
    'the tack of magenta is 12.5 tack units, which is too high: it has to be at most 9 tack units.',
  ],
  [
    { is: 'at least', reading: { what: 'mass trap', of: 'cyan', on: 'magenta' }, value: 9, unit: '%' },
    'For the mass trap of cyan on magenta, cyan has to print after magenta. On the bench it prints before.',
  ],
  [
    { is: 'at most', reading: { what: 'lifted', of: 'magenta', by: 'cyan' }, value: 2, unit: '%' },
    'For the part of the magenta that the cyan lifts, cyan has to print after magenta. On the bench it prints before.',
  ],
  [
    { is: 'at least', reading: { what: 'contamination', of: 'straw gold' }, value: 2, unit: '%' },
    'For the contamination of the unit of straw gold, straw gold has to be on the press. It is not.',
  ],
  [
    { is: 'at least', reading: { what: 'coverage', of: 'cyan' }, value: 110, unit: '%' },
    'the coverage of cyan is 71 %, which is too low: it has to be at least 110 %.',
  ],
  [
    { is: 'at least', reading: { what: 'coverage', of: 'cyan' }, value: 72, unit: '%' },
    'the coverage of cyan is 71 %, which is too low: it has to be at least 72 %.',
  ],
  [
    { is: 'order', inks: ['yellow', 'cyan'] },
    'The inks print in the order cyan, yellow. They have to print in the order yellow, cyan.',
  ],
  [
    { is: 'patch', inks: ['cyan'] },
    'Now cyan, magenta, and yellow print in the patch you look at. Choose the patch in which only cyan prints.',
  ],
  [
    { is: 'patch', inks: ['cyan', 'yellow'] },
    'Now cyan, magenta, and yellow print in the patch you look at. Choose the patch in which cyan and yellow print.',
  ],
  [{ is: 'paper', value: 'newsprint' }, 'The paper is coated. It has to be newsprint.'],
  [{ is: 'kind', value: 'web' }, 'The press is sheet-fed. It has to be web.'],
  [{ is: 'waterless', value: true }, 'The press is dampened. It has to be waterless.'],
  [{ is: 'sheet', value: 'first' }, 'The sheet looked at is: settled. It has to be: first.'],
])('%j', (expectation, expected) => {
  const finding = judgeBench(expectation, bench)
  expect(finding.met).toBe(false)
  expect(sentence(finding)).toBe(expected)
})

test('a contamination is told to a tenth, as the bench shows it', () => {
  const finding = judgeBench(
    { is: 'at least', reading: { what: 'contamination', of: 'yellow' }, value: 99, unit: '%' },
    bench,
  )
  const shown = (finding.value ?? NaN).toFixed(1).replace(/\.0$/, '')
  expect(finding.value).toBeGreaterThan(0)
  expect(sentence(finding)).toContain(` is ${shown} %, which is too low`)
})

test('of a diagnosis with the right cause, it is told how much of the evidence is too much or missing', () => {
  const asked: Question = { is: 'diagnosis', causes: [], right: 'cold', evidence: [], because: ['trap', 'degrees'] }
  const told = (cause: string, ...because: string[]) => {
    const step: AskedStep = { id: 'x', kind: 'expect', text: 'x', expect: [asked] }
    return sentence(judgeStep(step, bench, { cause, because }).findings[0])
  }
  expect(told('thin', 'trap', 'degrees')).toBe('That is not it yet.')
  expect(told('cold', 'trap')).toBe('You have the cause. One piece that proves it is missing.')
  expect(told('cold', 'trap', 'degrees', 'speed', 'paper')).toBe(
    'You have the cause. 2 of the pieces you ticked are as they should be, and so prove nothing.',
  )
  expect(told('cold', 'trap', 'speed')).toBe(
    'You have the cause. One of the pieces you ticked is as it should be, and so proves nothing. One piece that proves it is missing.',
  )
})

test('a question never gives its answer away', () => {
  const questions: Question[] = [
    { is: 'number', reading: { what: 'picked' }, tolerance: 0.1, unit: '%' },
    { is: 'choice', choices: [], right: 'a' },
    { is: 'sequence', items: [], right: ['a'] },
    { is: 'diagnosis', causes: [], right: 'a', evidence: [], because: [] },
  ]
  const told = questions.map((question) => {
    const step: AskedStep = { id: 'x', kind: 'expect', text: 'x', expect: [question] }
    const { findings } = judgeStep(step, bench, { enter: 77 })
    return sentence(findings[0])
  })
  expect(told).toEqual([
    'The bench shows another number for the picked part of the paper. Read it once more, with the bench as it stands now.',
    'That is not it yet.',
    'That is not it yet.',
    'That is not it yet.',
  ])
})

test.each([
  [
    'the film on the form roller',
    { what: 'form roller film', of: 'magenta' },
    'the film of magenta on the form roller',
  ],
  [
    'the film where another ink lies alone',
    { what: 'film', of: 'cyan', in: ['cyan'] },
    'the film of cyan where it prints alone',
  ],
] as const)('a reading taken by mistake is named: %s', (_, taken, name) => {
  const asked = { what: 'film', of: 'magenta', in: ['magenta'] } as const
  const entered = read(bench, taken)
  const step: AskedStep = {
    id: 'x',
    kind: 'expect',
    text: 'x',
    expect: [{ is: 'number', reading: asked, tolerance: 0.001, unit: 'um' }],
  }
  const { findings } = judgeStep(step, bench, { enter: Number(entered) })
  expect(sentence(findings[0])).toBe(
    `The number you entered is ${name}. The question is about the film of magenta where it prints alone.`,
  )
})

test('a number that no reading has is told with what is asked for; the right one is met', () => {
  const asked = { what: 'mass trap', of: 'magenta', on: 'cyan' } as const
  const step: AskedStep = {
    id: 'x',
    kind: 'expect',
    text: 'x',
    expect: [{ is: 'number', reading: asked, tolerance: 0.5, unit: '%' }],
  }
  const { findings } = judgeStep(step, bench, { enter: 3.21 })
  expect(sentence(findings[0])).toBe(
    'The bench shows another number for the mass trap of magenta on cyan. Read it once more, with the bench as it stands now.',
  )
  expect(judgeStep(step, bench, { enter: Number(read(bench, asked)) }).met).toBe(true)
})

test('of an order it is told how far it is right, and nothing of what comes next', () => {
  const right = ['a', 'b', 'c', 'd']
  const step: AskedStep = { id: 'x', kind: 'expect', text: 'x', expect: [{ is: 'sequence', items: [], right }] }
  const told = (sequence: string[]) => {
    const { met, findings } = judgeStep(step, bench, { sequence })
    return met || sentence(findings[0])
  }
  expect(told(['b', 'a', 'c', 'd'])).toBe('The one on top does not belong there yet.')
  expect(told(['a', 'd', 'c', 'b'])).toBe('The one on top is right. Look again at what comes after it.')
  expect(told(['a', 'b', 'd', 'c'])).toBe('The first 2 are right. Look again at what comes after them.')
  expect(told(right)).toBe(true)
  expect(told([...right, 'a'])).not.toBe(true)
})
