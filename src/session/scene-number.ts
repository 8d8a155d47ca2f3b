/** The one number of a scene, read off its sheet; and those that a set-up has to offer. */
import { liftedShares, pairs } from '../press/readings.ts'
import { printsIn } from '../press/patches.ts'
import type { SetUp } from '../press/setup.ts'
import type { SceneNumber, SceneReading } from './scene.ts'
import type { Session } from './session.ts'

/** A number with what its words need. */
export interface NumberRead {
  readonly of: SceneReading
  /** share of 1; of a film um */
  readonly value: number
  readonly ink: string
  readonly below: string
  /** where it was read, from 1 */
  readonly unit: number
}

/** Null where this set-up has no such number, as where the ink is not in it. */
export function readSceneNumber(session: Session, { of, ink = '', below = '' }: SceneNumber): NumberRead | null {
  const { setUp, results, patch, playback } = session
  const { readings } = results
  const names = setUp.inks.map(({ name }) => name)
  const at = names.indexOf(ink)
  const read = (value: number, place: number, other = ''): NumberRead => ({
    of,
    value,
    ink: names[place],
    below: other,
    unit: playback.unit + 1,
  })
  switch (of) {
    case 'trap': {
      const [earlier, later] = [at, names.indexOf(below)].toSorted((a, b) => a - b)
      const trap = readings.traps.find((each) => each.earlier === earlier && each.later === later)
      return trap ? read(trap.massTrap, later, names[earlier]) : null
    }
    case 'kept':
      return at < 0 || !printsIn(patch, at) ? null : read(readings.films[patch][at] / readings.onBare[at], at)
    case 'film':
      return at < 0 || !printsIn(patch, at) ? null : read(readings.films[patch][at], at)
    case 'lifted': {
      const lifted = liftedShares(results.accounts(patch)[playback.unit])
      const most = lifted.indexOf(Math.max(...lifted))
      return most < 0 ? null : read(lifted[most], most, names[playback.unit])
    }
    case 'picked':
      return read(readings.torn[patch], playback.unit)
    case 'contamination':
      return at < 0 ? null : read(readings.contamination[at], at)
  }
}

/** Every number that can be read off a sheet of this set-up. */
export function numbersOf({ inks }: SetUp): SceneNumber[] {
  const names = inks.map(({ name }) => name)
  return [
    ...pairs(names.length).map(([earlier, later]) => ({
      of: 'trap' as const,
      ink: names[later],
      below: names[earlier],
    })),
    ...names.map((ink) => ({ of: 'kept' as const, ink })),
    ...names.map((ink) => ({ of: 'film' as const, ink })),
    { of: 'lifted' },
    { of: 'picked' },
    ...names.map((ink) => ({ of: 'contamination' as const, ink })),
  ]
}
