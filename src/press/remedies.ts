/**
 * What the trade tries against poor trapping and picking. Each acts on a set-up, so that its gain and its cost can be
 * computed; costs the model does not know are stated in words. Cautions come before anything else.
 */
import type { CautionKey } from './cautions.ts'
import { atDesk, atPress, withSolvents } from './cautions.ts'
import { ranges } from './ranges.ts'
import type { RangeName } from './ranges.ts'
import type { Ink, SetUp } from './setup.ts'
import { dampeningAt, temperatureAt } from './setup.ts'
import type { Effect } from './effects.ts'
import { effectsOf } from './effects.ts'

export const remedyNames = [
  're-grade',
  'reduce tack',
  'stiffen first',
  'cool first',
  'slow down',
  'more film',
  'less film first',
  'light first',
  'less water',
  'stronger paper',
  'dry between',
] as const
export type RemedyName = (typeof remedyNames)[number]

export interface Remedy {
  /** told first; the last is always that this is a teaching model */
  readonly cautions: readonly CautionKey[]
  /** whether a unit has to be chosen: any but the first; other remedies act on the first unit or on the whole press */
  readonly atLaterUnit: boolean
  /** the set-up with the remedy applied, `unit` from 0; the same set-up where it can change nothing more */
  readonly apply: (setUp: SetUp, unit: number) => SetUp
}

/** How far one step of a remedy goes; all chosen, as steps a crew would try. */
const remedySteps = {
  /** tack units */
  tack: 2,
  /** degC */
  cooling: 5,
  /** of the speed */
  slowing: 0.25,
  /** of the film */
  film: 0.15,
  /** of normal dampening */
  water: 0.25,
  /** of the surface strength */
  paper: 0.25,
} as const

/** Inks come down by 2 tack units from unit to unit, their mean unchanged (step of 2 to 4: handbook). */
const gradedStep = 2

export const remedies: Readonly<Record<RemedyName, Remedy>> = {
  're-grade': whole(withSolvents, (setUp) => {
    const { inks } = setUp
    const mean = inks.reduce((sum, ink) => sum + ink.tack, 0) / inks.length
    const first = mean + (gradedStep * (inks.length - 1)) / 2
    return { ...setUp, inks: inks.map((ink, unit) => ({ ...ink, tack: legal('tack', first - gradedStep * unit) })) }
  }),
  'reduce tack': later(withSolvents, (ink) => ({ tack: legal('tack', ink.tack - remedySteps.tack) })),
  'stiffen first': whole(withSolvents, (setUp) =>
    withInk(setUp, 0, { tack: legal('tack', setUp.inks[0].tack + remedySteps.tack) }),
  ),
  'cool first': whole(atPress, (setUp) => {
    const now = temperatureAt(setUp.press, setUp.inks[0])
    return withInk(setUp, 0, { temperature: legal('temperature', now - remedySteps.cooling) })
  }),
  'slow down': whole(atDesk, (setUp) => {
    const { press } = setUp
    const speed = legal('speed', press.speed * (1 - remedySteps.slowing))
    // The units stand where they stand: at a lower speed the sheet takes longer from one to the next.
    return { ...setUp, press: { ...press, speed, interval: legal('interval', (press.interval * press.speed) / speed) } }
  }),
  'more film': later(atDesk, (ink) => ({ film: legal('film', ink.film * (1 + remedySteps.film)) })),
  'less film first': whole(atDesk, (setUp) =>
    withInk(setUp, 0, { film: legal('film', setUp.inks[0].film * (1 - remedySteps.film)) }),
  ),
  'light first': whole(withSolvents, (setUp) => ({
    ...setUp,
    inks: setUp.inks.toSorted((a, b) => a.coverage - b.coverage),
  })),
  'less water': whole(atDesk, (setUp) => {
    const { press, inks } = setUp
    if (press.waterless) return setUp
    const less = (dampening: number) => legal('dampening', dampening - remedySteps.water)
    return {
      ...setUp,
      inks: inks.map((ink) =>
        ink.dampening === undefined ? ink : { ...ink, dampening: less(dampeningAt(press, ink)) },
      ),
      press: { ...press, dampening: less(press.dampening) },
    }
  }),
  'stronger paper': whole(atDesk, (setUp) => {
    const { paper } = setUp
    const surfaceStrength = legal('surfaceStrength', paper.surfaceStrength * (1 + remedySteps.paper))
    return { ...setUp, paper: { ...paper, surfaceStrength } }
  }),
  'dry between': later(atPress, () => ({ dryBefore: true })),
}

function whole(cautions: readonly CautionKey[], apply: (setUp: SetUp) => SetUp): Remedy {
  return { cautions, atLaterUnit: false, apply }
}

function later(cautions: readonly CautionKey[], change: (ink: Ink) => Partial<Ink>): Remedy {
  return { cautions, atLaterUnit: true, apply: (setUp, unit) => withInk(setUp, unit, change(setUp.inks[unit])) }
}

function withInk(setUp: SetUp, unit: number, change: Partial<Ink>): SetUp {
  return { ...setUp, inks: setUp.inks.with(unit, { ...setUp.inks[unit], ...change }) }
}

function legal(name: RangeName, value: number): number {
  return Math.min(ranges[name].most, Math.max(ranges[name].least, value))
}

/** A remedy tried out. */
export interface Trial {
  readonly cautions: readonly CautionKey[]
  readonly setUp: SetUp
  /** computed; costs that the model does not know are told by the catalogue under remedy.<name>.cost */
  readonly gains: readonly Effect[]
  readonly costs: readonly Effect[]
}

/** Tries a remedy and computes what it gains and what it costs. */
export function tryRemedy(setUp: SetUp, name: RemedyName, unit = setUp.inks.length - 1): Trial {
  const remedy = remedies[name]
  const tried = remedy.apply(setUp, unit)
  const effects = effectsOf(setUp, tried)
  return {
    cautions: remedy.cautions,
    setUp: tried,
    gains: effects.filter(({ turn }) => turn === 'better'),
    costs: effects.filter(({ turn }) => turn === 'worse'),
  }
}
