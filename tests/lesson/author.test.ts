/** What the author's buttons write is read back by the checker as what stands on the bench; and the handout. */
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { act } from '../../src/lesson/action.ts'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import { handoutOf } from '../../src/lesson/handout.ts'
import { judgeBench } from '../../src/lesson/judge.ts'
import type { BenchExpectation } from '../../src/lesson/expectation.ts'
import { walk } from '../../src/lesson/walk.ts'
import { writeExpectation, writeStart } from '../../src/lesson/write.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { inEnglish } from '../../src/press/problem.ts'
import { benchForFigure } from '../../src/session/lesson-bench.ts'
import { changed, everyday, soundLesson } from './sound-lesson.ts'

const inks = [
  { name: 'cyan', tack: 13 },
  { name: 'magenta', tack: 11, film: 3, coverage: 0.2, colour: [50, 60, -10], dampening: 0.4 },
]

describe('"take this set-up"', () => {
  test.each([
    ['a plain one', { inks }],
    ['a web', { inks, press: { kind: 'web' } }],
    ['a web at another speed, waterless', { inks, press: { kind: 'web', speed: 7, waterless: true } }],
    ['a stated interval', { inks, press: { interval: 0.9 } }],
    ['a changed paper', { inks, paper: { base: 'newsprint', surfaceStrength: 20 } }],
    ['another sheet and seed', { inks, reading: { sheet: 30 }, seed: 77 }],
  ])('%s', (_, given) => {
    const checked = checkSetUp(given)
    if ('problems' in checked) throw new Error('refused')
    const { start } = parse(writeStart(checked.setUp)) as { start: unknown }
    expect(checkSetUp(start)).toEqual(checked)
  })

  test('leaves out what stands at its default', () => {
    const checked = checkSetUp({ inks: [inks[0], { name: 'a', tack: 9 }] })
    if ('problems' in checked) throw new Error('refused')
    expect(writeStart(checked.setUp)).not.toMatch(/film|speed|seed|interval/)
  })
})

describe('"take this reading as the expectation"', () => {
  const { lesson } = checkLesson(soundLesson, { everyday })
  if (!lesson) throw new Error('the sound lesson is not sound')
  const [{ opens }] = walk(lesson)

  test('holds on the bench it was taken from, and no longer once the bench is changed', () => {
    const text = writeExpectation(opens, { what: 'mass trap', of: 'magenta', on: 'cyan' }, 1)
    if (typeof text !== 'string') throw new Error(inEnglish(text.problem))
    const [expectation] = parse(text) as BenchExpectation[]
    expect(judgeBench(expectation, opens).met).toBe(true)
    const next = act(opens, { change: 'tack', of: 'magenta', to: 9 })
    expect('problem' in next || judgeBench(expectation, next).met).toBe(false)
  })

  test('can be put into a lesson as it stands', () => {
    const text = writeExpectation(opens, { what: 'picked' }, 5)
    if (typeof text !== 'string') throw new Error(inEnglish(text.problem))
    const withClaim = changed('    done: Well done.', `    claims:\n      ${text.trimEnd()}\n    done: Well done.`)
    expect(checkLesson(withClaim, { everyday }).problems).toEqual([])
  })

  test('says why there is no reading', () => {
    const none = writeExpectation(opens, { what: 'mass trap', of: 'cyan', on: 'magenta' }, 1)
    expect(typeof none === 'object' && inEnglish(none.problem)).toBe(
      'cyan does not print after magenta, so no trap can be read',
    )
  })
})

test('a handout holds every step, the figures as the bench then stands, and answers apart', () => {
  const text = changed(
    'solution:',
    'handout:\n  figures: [{ step: lower, caption: See. }]\n  blanks: [{ ask: What?, answer: That. }]\nsolution:',
  )
  const { lesson } = checkLesson(text, { everyday })
  if (!lesson) throw new Error('not sound')
  const handout = handoutOf(lesson)
  expect(handout.steps.map(({ id }) => id)).toEqual(lesson.steps.map(({ id }) => id))
  expect(handout.steps[1].choices).toEqual(['More', 'Less'])
  expect(handout.figures[0].bench.setUp.inks[1].tack).toBe(10)
  expect(handout).toMatchObject({ blanks: ['What?'], answers: ['That.'], cautions: ['teaching-model'] })
})

test.each([
  ['after the unit the step names', '    sheetAfter: 1\n', 0, 'passed'],
  ['in the nip the step names', '    sheetIn: 1\n', 0, 'opening'],
  ['in the last nip where it names none', '', 1, 'opening'],
])('a figure shows the sheet %s', (_, line, unit, stands) => {
  const text = changed('    text: Get the film', `${line}    text: Get the film`).replace(
    'solution:',
    'handout:\n  figures: [{ step: lower, caption: See. }]\n  blanks: [{ ask: What?, answer: That. }]\nsolution:',
  )
  const { lesson } = checkLesson(text, { everyday })
  if (!lesson) throw new Error('not sound')
  const [{ bench, stand }] = handoutOf(lesson).figures
  const { playback } = benchForFigure(bench, stand)
  expect(playback.unit).toBe(unit)
  // 1 is the end of a nip; before it the films are parting.
  expect(playback.phase === 1 ? 'passed' : 'opening').toBe(stands)
})
