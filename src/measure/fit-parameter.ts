/**
 * What may be fitted to a press sheet. Chosen so that densities can decide it:
 *
 * - film on the form roller, one an ink: the solid's density says it almost alone;
 * - one value that moves all traps: dampening (how much weaker fresh ink is than ink on the sheet), or the setting gain
 *   (how much stronger ink on the sheet has become), or evenness (how strongly trap answers to a step in tack). With
 *   tacks that step down evenly the three do nearly the same, and readings to 0.01 leave two of them at once open;
 * - tack of an ink, relative to the others: of all inks but one, since only ratios of tack act on trap.
 *
 * Not offered: the even split on wet ink, which the whole model rests on, and the paper's contact and hold, which the
 * form-roller films make up for. Whatever is asked for, what the data leave open is refused (see fit.ts).
 */
import type { RangeName } from '../press/ranges.ts'
import { ranges } from '../press/ranges.ts'
import type { SetUp } from '../press/setup.ts'
import { dampeningAt } from '../press/setup.ts'
import { unitsIn } from '../press/patches.ts'
import type { PressSheet } from './press-sheet.ts'
import type { Said } from './said.ts'

export type FitKind = Extract<RangeName, 'film' | 'tack' | 'dampening' | 'settingGain' | 'evenness'>

export interface FitParameter {
  readonly kind: FitKind
  /** whose film or tack; null for the press and the paper */
  readonly unit: number | null
}

/** Legal values, in the unit of the range of that name. */
export function boundsOf({ kind }: FitParameter): { least: number; most: number; unit: string | null } {
  return ranges[kind]
}

/** Everything that may be fitted on this set-up. */
export function fitParameters(setUp: SetUp): FitParameter[] {
  const { inks, press } = setUp
  return [
    ...inks.map((_, unit): FitParameter => ({ kind: 'film', unit })),
    { kind: 'evenness', unit: null },
    ...(press.waterless ? [] : [{ kind: 'dampening', unit: null } as const]),
    { kind: 'settingGain', unit: null },
    ...inks.map((_, unit): FitParameter => ({ kind: 'tack', unit })),
  ]
}

/** A first choice: the film of every ink that was read, and with overprints the one value that moves all traps. */
export function usualParameters(setUp: SetUp, sheet: PressSheet): FitParameter[] {
  const { inks, press } = setUp
  const read = sheet.patches.map(({ patch }) => unitsIn(patch, inks.length))
  const films = inks.flatMap((_, unit): FitParameter[] =>
    read.some((units) => units.includes(unit)) ? [{ kind: 'film', unit }] : [],
  )
  if (!read.some((units) => units.length > 1)) return films
  return [...films, { kind: press.waterless ? 'settingGain' : 'dampening', unit: null }]
}

/** The value a parameter has in a set-up. */
export function valueIn(setUp: SetUp, { kind, unit }: FitParameter): number {
  if (kind === 'dampening') return setUp.press.dampening
  if (kind === 'evenness' || kind === 'settingGain') return setUp.paper[kind]
  return setUp.inks[unit ?? 0][kind]
}

/** The set-up with these values in place of its own; the inks' own dampenings move in step with the press's. */
export function withParameters(setUp: SetUp, parameters: readonly FitParameter[], values: readonly number[]): SetUp {
  const inks = setUp.inks.map((ink) => ({ ...ink }))
  const paper = { ...setUp.paper }
  const press = { ...setUp.press }
  parameters.forEach(({ kind, unit }, index) => {
    const value = values[index]
    if (kind === 'dampening') {
      press.dampening = value
      inks.forEach((ink) => {
        if (ink.dampening !== undefined)
          ink.dampening = withinRange(dampeningAt(setUp.press, ink) + value - setUp.press.dampening)
      })
    } else if (kind === 'film' || kind === 'tack') inks[unit ?? 0][kind] = value
    else paper[kind] = value
  })
  return { ...setUp, inks, paper, press }
}

function withinRange(dampening: number): number {
  const { least, most } = ranges.dampening
  return Math.min(most, Math.max(least, dampening))
}

/** What a parameter is called. */
export function parameterName({ kind, unit }: FitParameter, setUp: SetUp): Said {
  return unit === null
    ? { message: `fit.parameter.${kind}` }
    : { message: `fit.parameter.${kind}`, values: { ink: setUp.inks[unit].name } }
}
