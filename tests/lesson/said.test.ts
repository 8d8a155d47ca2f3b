/** What a learner is told about the bench: its own figure, what was asked for, and no answer given away. */
import { IntlMessageFormat } from 'intl-messageformat'
import { expect, test } from 'vitest'
import { benchOf } from '../../src/lesson/bench.ts'
import type { BenchExpectation, Question } from '../../src/lesson/expectation.ts'
import { judgeBench, judgeStep } from '../../src/lesson/judge.ts'
import { read } from '../../src/lesson/reading.ts'
import { sayFinding } from '../../src/lesson/said.ts'
import type { AskedStep } from '../../src/lesson/step.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { lesson as words } from '../../src/words/en/lesson.ts'

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
  return String(new IntlMessageFormat(words[message], 'en').format<string>(values))
}

const tack = { what: 'tack', of: 'magenta' } as const

test.each<[BenchExpectation, string]>([
  [
    { is: 'within', reading: tack, value: 10, tolerance: 0.5, unit: 'tack units' },
    'tack of magenta reads 12.5 tack units. Asked for are 10 tack units, give or take 0.5.',
  ],
  [
    { is: 'at least', reading: tack, value: 14, unit: 'tack units' },
    'tack of magenta reads 12.5 tack units. Asked for are at least 14 tack units.',
  ],
  [
    { is: 'at most', reading: tack, value: 9, unit: 'tack units' },
    'tack of magenta reads 12.5 tack units. Asked for are at most 9 tack units.',
  ],
  [
    { is: 'at least', reading: { what: 'mass trap', of: 'cyan', on: 'magenta' }, value: 9, unit: '%' },
    'mass trap of cyan on magenta cannot be read here: cyan does not print after magenta, so no trap can be read.',
  ],
  [
    { is: 'at least', reading: { what: 'coverage', of: 'cyan' }, value: 110, unit: '%' },
    'coverage of cyan reads 71 %. Asked for are at least 110 %.',
  ],
  [
    { is: 'at least', reading: { what: 'coverage', of: 'cyan' }, value: 71, unit: '%' },
    'coverage of cyan reads 70.6 %. Asked for are at least 71 %.',
  ],
  [{ is: 'order', inks: ['yellow', 'cyan'] }, 'The inks print in the order cyan, yellow. Asked for is yellow, cyan.'],
  [
    { is: 'patch', inks: ['cyan'] },
    'The patch looked at is that of cyan, magenta, yellow. Asked for is the patch of cyan.',
  ],
  [{ is: 'paper', value: 'newsprint' }, 'The paper is coated. Asked for is newsprint.'],
  [{ is: 'kind', value: 'web' }, 'The press is sheet-fed. Asked for is web.'],
  [{ is: 'waterless', value: true }, 'The press is dampened. Asked for is waterless.'],
  [{ is: 'sheet', value: 'first' }, 'The sheet looked at is: settled. Asked for is: first.'],
])('%j', (expectation, expected) => {
  const finding = judgeBench(expectation, bench)
  expect(finding.met).toBe(false)
  expect(sentence(finding)).toBe(expected)
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
    'The bench reads something else. Asked for is this one: picked, on the bench as it stands now.',
    'That is not it yet.',
    'That is not it yet.',
    'That is not it yet.',
  ])
})

test.each([
  ['the film on the form roller', { what: 'form roller film', of: 'magenta' }, 'form roller film of magenta'],
  [
    'the film where another ink lies alone',
    { what: 'film', of: 'cyan', in: ['cyan'] },
    'film of cyan in the patch of cyan',
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
    `The number you entered is another reading: ${name}. Asked for is this one: film of magenta in the patch of magenta.`,
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
    'The bench reads something else. Asked for is this one: mass trap of magenta on cyan, on the bench as it stands now.',
  )
  expect(judgeStep(step, bench, { enter: Number(read(bench, asked)) }).met).toBe(true)
})
