/** A learner's way: forward only when something was done, kept over a reload, summed up honestly. */
import { expect, test } from 'vitest'
import { inEnglish } from '../../src/press/problem.ts'
import { act } from '../../src/lesson/action.ts'
import type { Bench } from '../../src/lesson/bench.ts'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import type { Lesson } from '../../src/lesson/lesson.ts'
import type { Progress } from '../../src/lesson/progress.ts'
import {
  askHint,
  begin,
  currentStep,
  goBack,
  goOn,
  handIn,
  mayGoOn,
  recordOf,
  resume,
  retry,
  settledBy,
  summaryOf,
} from '../../src/lesson/progress.ts'
import { openControls } from '../../src/lesson/replay.ts'
import { openStep, walk } from '../../src/lesson/walk.ts'
import { answerOf } from '../../src/lesson/step.ts'
import { everyday, soundLesson } from './sound-lesson.ts'

const checked = checkLesson(soundLesson, { everyday }).lesson
if (!checked) throw new Error('the sound lesson is not sound')
const lesson: Lesson = checked
const stations = walk(lesson)

function benchAt(step: string): { opens: Bench; done: Bench } {
  const station = stations.find((each) => each.step === step)
  if (!station) throw new Error(`no step ${step}`)
  return station
}

/** Goes through the lesson the author's own way. */
function solved(): Progress {
  return lesson.steps.reduce((progress, step) => {
    const way = lesson.solution.find((each) => each.step === step.id)
    const handed = handIn(lesson, progress, benchAt(step.id).done, way && answerOf(way))
    return goOn(lesson, handed.progress)
  }, begin(lesson))
}

test('reading on never gets past a step that asks for something', () => {
  let progress = begin(lesson)
  for (let press = 0; press < 20; press++) progress = goOn(lesson, progress)
  expect(progress.step).toBe('guess')
  expect(mayGoOn(lesson, progress)).toBe(false)
})

test('the author’s own way finishes the lesson unaided', () => {
  expect(summaryOf(lesson, solved())).toEqual({
    steps: 6,
    done: 6,
    predictions: 1,
    foretold: 1,
    asked: 4,
    solved: 4,
    unaided: 4,
    hints: 0,
    misses: 0,
    finished: true,
  })
})

test('a committed prediction cannot be changed, and is told only once the bench has shown it', () => {
  const opened = begin(lesson, 'guess')
  const committed = handIn(lesson, opened, benchAt('guess').opens, { choose: 'less' })
  expect(committed.verdict).toBeUndefined()
  const again = handIn(lesson, committed.progress, benchAt('guess').opens, { choose: 'more' })
  expect(recordOf(again.progress, 'guess').answer).toEqual({ choose: 'less' })
  expect(retry(lesson, again.progress)).toBe(again.progress)

  const lower = goOn(lesson, committed.progress)
  const missed = handIn(lesson, lower, benchAt('lower').opens)
  expect(missed.settled).toEqual([])
  const met = handIn(lesson, lower, benchAt('lower').done)
  expect(met.settled).toMatchObject([{ chosen: 'less', met: false, feedback: 'Look again.' }])
  expect(settledBy(lesson, met.progress, 'lower')).toEqual(met.settled)
  expect(settledBy(lesson, met.progress, 'look')).toEqual([])
})

test('a learner who gets everything wrong is answered, counted and not let past', () => {
  const progress = begin(lesson, 'lower')
  const spoilt = act(benchAt('lower').opens, { change: 'tack', of: 'magenta', to: 16 })
  if ('problem' in spoilt) throw new Error(inEnglish(spoilt.problem))
  const first = handIn(lesson, progress, spoilt)
  expect(first.verdict).toMatchObject({ met: false, feedback: ['That was up.'] })
  expect(first.verdict?.findings[0]).toMatchObject({ met: false, unit: 'um' })
  const second = handIn(lesson, first.progress, spoilt)
  expect(recordOf(second.progress, 'lower')).toMatchObject({ done: false, misses: 2 })
  expect(goOn(lesson, second.progress).step).toBe('lower')
  expect(summaryOf(lesson, second.progress)).toMatchObject({ done: 0, misses: 2, finished: false })
})

test('a step once met stays met when the learner plays on with it', () => {
  const met = handIn(lesson, begin(lesson, 'lower'), benchAt('lower').done)
  const played = handIn(lesson, met.progress, benchAt('lower').opens)
  expect(mayGoOn(lesson, played.progress)).toBe(true)
})

test('hints come one by one, as many as there are', () => {
  const once = askHint(lesson, begin(lesson, 'lower'))
  expect(recordOf(once, 'lower').hints).toBe(1)
  expect(recordOf(askHint(lesson, once), 'lower').hints).toBe(1)
})

test('back and forth, and a fresh try', () => {
  const progress = solved()
  expect(progress.step).toBe('why')
  const back = goBack(lesson, progress)
  expect(currentStep(lesson, back).id).toBe('look')
  expect(goBack(lesson, begin(lesson)).step).toBe('what')
  expect(recordOf(retry(lesson, back), 'look').done).toBe(false)
})

test('what was kept is taken up again, after a trip through JSON', () => {
  const progress = goOn(lesson, begin(lesson))
  expect(resume(lesson, JSON.parse(JSON.stringify(progress)))).toEqual(progress)
})

test.each([
  ['nothing', undefined],
  ['rubbish', { lesson: 'small-lesson' }],
  ['another lesson', { ...begin(lesson), lesson: 'other' }],
])('%s is not taken up', (_, kept) => {
  expect(resume(lesson, kept)).toBeUndefined()
})

test('what was kept of a step that no longer exists is left out', () => {
  const kept = { lesson: 'small-lesson', step: 'gone', records: { gone: { done: true, misses: 0, hints: 0 } } }
  expect(resume(lesson, kept)).toEqual({ lesson: 'small-lesson', step: 'what', records: {} })
})

test('a learner has the controls that are shown and not locked', () => {
  expect(openControls(lesson)).toEqual(['tack', 'patch'])
  expect(openControls({ lock: ['speed'] })).not.toContain('speed')
})

test('a step may set up the bench anew as it opens', () => {
  const bench = openStep(benchAt('what').opens, [{ change: 'tack', of: 'cyan', to: 9 }])
  expect(bench.setUp.inks[0].tack).toBe(9)
})
