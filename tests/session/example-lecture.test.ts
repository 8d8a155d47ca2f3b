/** The sentences of the ready lecture say something of its computed sheets; each must be true of them. */
import { expect, test } from 'vitest'
import { exampleLecture } from '../../src/session/example-lecture.ts'
import type { Scene } from '../../src/session/scene.ts'
import { numbersOf, readSceneNumber } from '../../src/session/scene-number.ts'
import { openScene } from '../../src/session/scene-session.ts'
import { Session } from '../../src/session/session.ts'

const scenes = exampleLecture((name) => ({ name, note: '' }))

function scene(name: string): Scene {
  const found = scenes.find((each) => each.name === name)
  if (!found) throw new Error(`There is no scene ${name}.`)
  return found
}

function values(name: string): number[] {
  const shown = scene(name)
  return openScene(shown, new Session().look).map((bench) => {
    const read = shown.number && readSceneNumber(bench, shown.number)
    if (!read) throw new Error(`The scene ${name} has no number.`)
    return read.value
  })
}

const tacks = (name: string) => scene(name).setUp.inks.map(({ tack }) => tack)

test('every number it shows is one that its set-up offers', () => {
  for (const { setUp, number } of scenes) if (number) expect(numbersOf(setUp)).toContainEqual(number)
})

test('its stairs lead down in the one order and up in the other', () => {
  expect(tacks('stair')).toEqual(tacks('stair').toSorted((a, b) => b - a))
  expect(tacks('turned')).toEqual(tacks('stair').toReversed())
})

test('in the right order most of the last ink stays, in the other less than half', () => {
  expect(values('takes')[0]).toBeGreaterThan(0.5)
  expect(values('fails')[0]).toBeLessThan(0.5)
})

test('the other order lifts more and leaves less', () => {
  const [down, up] = values('both')
  expect(up).toBeGreaterThan(down)
  const [more, less] = values('faces')
  expect(more).toBeGreaterThan(less)
})

test('the weak paper loses what the same inks leave on a stronger one', () => {
  const { setUp, view, number = { of: 'picked' } } = scene('paper')
  const strong = { ...setUp, paper: { ...setUp.paper, surfaceStrength: 2 * setUp.paper.surfaceStrength } }
  const [weak, kept] = [setUp, strong].map((each) => {
    const [bench] = openScene({ name: '', note: '', setUp: each, view }, new Session().look)
    return readSceneNumber(bench, number)?.value ?? NaN
  })
  expect(weak).toBeGreaterThan(10 * kept)
  expect(setUp.inks.map(({ tack }) => tack)).toEqual(setUp.inks.map(({ tack }) => tack).toSorted((a, b) => b - a))
})
