/** What a change to a set-up does, computed: the readings that got better and those that got worse. */
import type { SetUp } from './setup.ts'
import { readSheet } from './readings.ts'
import { runPress } from './run.ts'

export const effectNames = [
  'least trap',
  'most lifted',
  'most torn',
  'contamination',
  'thinnest solid',
  'ink laid',
  'speed',
] as const
export type EffectName = (typeof effectNames)[number]

export interface Effect {
  readonly name: EffectName
  /** in the unit of {@link effectKinds} */
  readonly before: number
  readonly after: number
  readonly turn: 'better' | 'worse' | 'same'
}

interface EffectKind {
  readonly unit: 'share' | 'um' | 'm/s'
  /** whether more of it is better */
  readonly more: 'better' | 'worse'
  /** changes smaller than this are told as none; chosen near what an instrument tells apart */
  readonly same: number
}

export const effectKinds: Readonly<Record<EffectName, EffectKind>> = {
  /** lowest mass trap of any pair of inks */
  'least trap': { unit: 'share', more: 'better', same: 0.01 },
  /** largest share of any earlier ink that one unit lifts where all print */
  'most lifted': { unit: 'share', more: 'worse', same: 0.01 },
  'most torn': { unit: 'share', more: 'worse', same: 0.001 },
  /** largest foreign share in any unit once the run has settled */
  contamination: { unit: 'share', more: 'worse', same: 0.005 },
  /** least film of any ink on bare paper: weaker colour */
  'thinnest solid': { unit: 'um', more: 'better', same: 0.02 },
  /** where all inks print: more ink sets off and dries more slowly */
  'ink laid': { unit: 'um', more: 'worse', same: 0.05 },
  /** what the press puts out */
  speed: { unit: 'm/s', more: 'better', same: 0.01 },
}

/** All effects of going from one set-up to another, read as the set-ups' reading asks, contamination always settled. */
export function effectsOf(before: SetUp, after: SetUp): Effect[] {
  const from = valuesOf(before)
  const to = valuesOf(after)
  return effectNames.map((name) => ({
    name,
    before: from[name],
    after: to[name],
    turn: turnOf(name, from[name], to[name]),
  }))
}

function turnOf(name: EffectName, from: number, to: number): Effect['turn'] {
  const { more, same } = effectKinds[name]
  if (Math.abs(to - from) < same) return 'same'
  return to > from === (more === 'better') ? 'better' : 'worse'
}

function valuesOf(setUp: SetUp): Record<EffectName, number> {
  const sheet = readSheet(runPress(setUp))
  const settled = setUp.reading === 'settled' ? sheet : readSheet(runPress({ ...setUp, reading: 'settled' }))
  const all = sheet.films[sheet.films.length - 1]
  return {
    'least trap': Math.min(...sheet.traps.map(({ massTrap }) => massTrap)),
    'most lifted': Math.max(...sheet.lifted.flat(), 0),
    'most torn': sheet.worstTorn,
    contamination: Math.max(...settled.contamination),
    'thinnest solid': Math.min(...setUp.inks.map((_, ink) => sheet.films[1 << ink][ink])),
    'ink laid': all.reduce((sum, film) => sum + film, 0),
    speed: setUp.press.speed,
  }
}
