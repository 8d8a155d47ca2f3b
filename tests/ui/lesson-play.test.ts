import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import type { Lesson } from '../../src/lesson/lesson.ts'
import type { LearningStorage } from '../../src/session/learning.ts'
import { Learning } from '../../src/session/learning.ts'
import { Session } from '../../src/session/session.ts'
import { LessonPlay } from '../../src/ui/lessons/lesson-play.ts'
import { readingsToTake } from '../../src/ui/lessons/readings-to-take.ts'
import { benchNow } from '../../src/session/lesson-bench.ts'
import { openingPhase } from '../../src/session/playback.ts'
import { changed, everyday } from '../lesson/sound-lesson.ts'

const { lesson } = checkLesson(readFileSync('lessons/two-inks-wrong-order.lesson.yaml', 'utf8'), { everyday: [] })
const wrongOrder = lesson as Lesson

/** ms since 1970: 2026-03-02 08:00 in UTC */
const now = Date.UTC(2026, 2, 2, 8)

function fresh(storage: LearningStorage | null = null) {
  const session = new Session()
  const learning = new Learning(storage)
  return { session, learning, play: new LessonPlay(wrongOrder, session, wrongOrder.id, learning, () => now) }
}

test('a lesson puts its own start on the bench', () => {
  const { session } = fresh()
  expect(session.setUp.inks.map(({ name, tack }) => [name, tack])).toEqual([
    ['cyan', 16],
    ['yellow', 8],
  ])
})

test('a prediction is asked for before anything is shown, and stays when the step is opened again', () => {
  const { play } = fresh()
  play.goOn()
  expect(play.predicting).toBe(true)
  play.goOn()
  expect(play.step.id).toBe('guess')
  play.handIn({ choose: 'same' })
  play.handIn({ choose: 'worse' })
  expect(play.progress.records['guess'].answer).toEqual({ choose: 'same' })
  expect(play.predicting).toBe(false)
})

test('readings are covered in the steps that lead up to a prediction, until it is made', () => {
  const { play } = fresh()
  expect(play.step.kind).toBe('say')
  expect(play.predictingSoon).toBe(true)
  play.goOn()
  expect(play.predictingSoon).toBe(false)
  play.handIn({ choose: 'worse' })
  play.goBack()
  expect(play.step.kind).toBe('say')
  expect(play.predictingSoon).toBe(false)
})

test('a missed step says what the bench was then, and setting back brings the bench of its opening', () => {
  const { session, play } = fresh()
  play.jumpTo('repair')
  const before = session.setUp
  expect(before.inks.map(({ name }) => name)).toEqual(['yellow', 'cyan'])
  play.handIn()
  expect(play.missed?.bench.setUp).toBe(before)
  session.change({ kind: 'move ink', from: 0, to: 1 })
  play.setBack()
  expect(session.setUp).toEqual(before)
  session.change({ kind: 'move ink', from: 0, to: 1 })
  play.handIn()
  expect(play.missed).toBeNull()
  expect(play.progress.records['repair'].done).toBe(true)
})

test('the next visit goes on at the same step, with the same bench', () => {
  const { session, learning, play } = fresh()
  play.jumpTo('swap')
  session.change({ kind: 'move ink', from: 0, to: 1 })
  play.handIn()
  play.keep()
  const next = new Session()
  const again = new LessonPlay(wrongOrder, next, wrongOrder.id, learning, () => now)
  expect(again.progress).toEqual(play.progress)
  expect(next.setUp).toEqual(session.setUp)
})

test('undo ends where the lesson put the bench, and the bench before comes back with all its steps', () => {
  const session = new Session()
  session.change({ kind: 'edit ink', unit: 0, field: 'tack', value: 20 })
  const before = session.setUp
  const play = new LessonPlay(wrongOrder, session, wrongOrder.id, new Learning(null), () => 0)
  const start = session.setUp
  expect(session.canUndo).toBe(false)
  session.change({ kind: 'move ink', from: 0, to: 1 })
  for (let times = 0; times < 5; times++) session.undo()
  expect(session.setUp).toBe(start)
  session.change({ kind: 'move ink', from: 0, to: 1 })
  play.jumpTo('repair')
  expect(session.canUndo).toBe(false)
  expect(session.own.setUp).toBe(before)
  session.giveBack()
  expect(session.setUp).toBe(before)
  session.undo()
  expect(session.setUp.inks[0].tack).toBe(16)
})

test('what is kept of a lesson is what was done in it, not what is on the bench afterwards', () => {
  const { session, learning, play } = fresh()
  session.change({ kind: 'move ink', from: 0, to: 1 })
  play.keep()
  session.giveBack()
  play.keep()
  expect(learning.lesson(wrongOrder.id)?.bench?.setUp.inks.map(({ name }) => name)).toEqual(['yellow', 'cyan'])
})

test('terms are explained step by step, and stay so when the learner goes back', () => {
  const { play } = fresh()
  expect(play.explained).toEqual([])
  play.jumpTo('where-it-went')
  expect(play.explained).toEqual(['lifting'])
  play.goOn()
  play.goBack()
  play.goBack()
  expect(play.explained).toEqual(['lifting'])
})

test('another version of the lesson keeps the place, and leaves the bench alone', () => {
  const { session, play } = fresh()
  play.jumpTo('swap')
  session.change({ kind: 'edit ink', unit: 0, field: 'tack', value: 15 })
  const { setUp } = session
  const next = LessonPlay.inPlaceOf(play, { ...wrongOrder, title: 'Other' })
  expect(next.step.id).toBe('swap')
  expect(session.setUp).toBe(setUp)
})

test('every reading an author is offered can be taken', () => {
  const { session } = fresh()
  const offered = readingsToTake(benchNow(session)).map(({ name }) => name)
  expect(offered).toContain('the mass trap of yellow on cyan')
  expect(offered).not.toContain('the mass trap of cyan on yellow')
  expect(new Set(offered).size).toBe(offered.length)
})

describe('where the sheet stands', () => {
  /** A lesson of two inks whose step `id` has these lines as well. */
  function playing(id: string, lines: string) {
    const text = changed(`  - id: ${id}\n`, `  - id: ${id}\n    ${lines}\n`)
    const { lesson: made, problems } = checkLesson(text, { everyday })
    if (!made) throw new Error(problems.map(({ message }) => message).join('; '))
    const session = new Session()
    return { session, play: new LessonPlay(made, session, made.id, null, () => now) }
  }
  const place = ({ playback }: Session) => [playback.unit, playback.phase, playback.playing]

  test('a step that asks for something stops the press behind the last unit that prints', () => {
    const { session, play } = playing('look', 'sheetAfter: 1')
    play.jumpTo('guess')
    session.play({ kind: 'look at unit', unit: 0 })
    session.play({ kind: 'scrub', phase: 0.3 })
    play.handIn({ choose: 'more' })
    expect(place(session)).toEqual([0, 0.3, false])
    session.play({ kind: 'play' })
    play.goOn()
    expect(play.step.id).toBe('lower')
    expect(place(session)).toEqual([1, 1, false])
  })

  test('a step that only tells leaves a sheet alone, but not one that runs', () => {
    const { session, play } = playing('look', 'sheetAfter: 1')
    play.jumpTo('guess')
    session.play({ kind: 'look at unit', unit: 0 })
    session.play({ kind: 'play' })
    play.goBack()
    expect(place(session)).toEqual([1, 1, false])
  })

  test('a step that names a unit has the sheet there, also after every change of the bench', () => {
    const { session, play } = playing('lower', 'sheetAfter: 1')
    play.jumpTo('lower')
    expect(place(session)).toEqual([0, 1, false])
    session.play({ kind: 'play', once: true })
    session.play({ kind: 'tick', seconds: 1 })
    play.follow()
    expect(session.playback.playing).toBe(true)
    session.change({ kind: 'edit ink', unit: 1, field: 'tack', value: 12 })
    play.follow()
    expect(place(session)).toEqual([0, 1, false])
    session.lookWith({ leftOut: ['cyan'] })
    play.follow()
    expect(place(session)).toEqual([1, 1, false])
  })

  test('a step may want the films parting in a nip, and shows them once its prediction is made', () => {
    const { session, play } = playing('guess', 'sheetIn: 1')
    play.goOn()
    expect(place(session)).toEqual([0, openingPhase, false])
    session.play({ kind: 'scrub', phase: 0 })
    play.handIn({ choose: 'more' })
    expect(place(session)).toEqual([0, openingPhase, false])
  })

  test('another patch is looked at where its last ink has been laid', () => {
    const { session, play } = playing('look', 'sheetAfter: 1')
    play.jumpTo('number')
    session.lookWith({ leftOut: ['magenta'] })
    play.follow()
    session.play({ kind: 'look at unit', unit: 0 })
    session.lookWith({ leftOut: [] })
    play.follow()
    expect(session.playback.unit).toBe(1)
  })
})
