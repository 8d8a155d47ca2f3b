/** Cures: putting a cause right, or one of the trade's remedies instead. */
import { readingsByName } from './shown.ts'
import type { CautionKey } from '../press/cautions.ts'
import { atDesk, atPress, withSolvents } from '../press/cautions.ts'
import type { RemedyName } from '../press/remedies.ts'
import { remedies } from '../press/remedies.ts'
import { ranges } from '../press/ranges.ts'
import type { RangeName } from '../press/ranges.ts'
import type { Ink, SetUp } from '../press/setup.ts'
import { temperatureAt } from '../press/setup.ts'
import type { Cause, FaultKind } from './cause.ts'
import type { Drill } from './drill.ts'

export type Cure =
  | { readonly kind: 'put right'; readonly cause: Cause }
  /** `unit` by the order of the ticket, for remedies at a later unit; else null */
  | { readonly kind: 'remedy'; readonly remedy: RemedyName; readonly unit: number | null }

const cautionsFor: Readonly<Record<FaultKind, readonly CautionKey[]>> = {
  'order swapped': withSolvents,
  'tack too high': withSolvents,
  'tack too low': withSolvents,
  'film too heavy': atDesk,
  'film too thin': atDesk,
  'water too high': atDesk,
  'unit too warm': atPress,
  'paper weak': atDesk,
  'paper too closed': atDesk,
  'speed too high': atDesk,
  'interval too short': atPress,
  'soiled unit': withSolvents,
}

/** What is to be told before the cure is applied. */
export function cautionsOf(cure: Cure): readonly CautionKey[] {
  return cure.kind === 'remedy' ? remedies[cure.remedy].cautions : cautionsFor[cure.cause.kind]
}

/** Remedies that a drill offers beside putting things right: they work around a cause. */
const workArounds: readonly RemedyName[] = ['slow down', 'reduce tack', 'more film', 'less water', 'stronger paper']

/** The cures a drill offers. */
export function curesFor({ offered, ticket }: Drill): Cure[] {
  const last = ticket.inks.length - 1
  return [
    ...offered.map((cause): Cure => ({ kind: 'put right', cause })),
    ...workArounds
      .filter((remedy) => !(ticket.press.waterless && remedy === 'less water'))
      .map((remedy): Cure => ({ kind: 'remedy', remedy, unit: remedies[remedy].atLaterUnit ? last : null })),
  ]
}

/** The press with the cure applied, to the hidden press or to one already partly cured. */
export function applyCure(drill: Drill, press: SetUp, cure: Cure): SetUp {
  if (cure.kind === 'put right') return putRight(drill, press, cure.cause)
  return remedies[cure.remedy].apply(press, cure.unit === null ? 0 : placeOf(drill, press, cure.unit))
}

/** The unit in which the ink of the ticket's `unit` sits. */
function placeOf({ ticket }: Drill, press: SetUp, unit: number): number {
  return press.inks.findIndex(({ name }) => name === ticket.inks[unit].name)
}

/**
 * Puts a cause right by as much as its measurement shows. Where that measurement misleads, this takes away what was
 * never there, and the press is off its ticket the other way.
 */
function putRight(drill: Drill, press: SetUp, { kind, unit }: Cause): SetUp {
  const { ticket } = drill
  const shown = readingsByName(drill)
  const place = unit === null ? 0 : placeOf(drill, press, unit)
  const wanted = ticket.inks[unit ?? 0]
  const withInk = (change: Partial<Ink>): SetUp => ({
    ...press,
    inks: press.inks.with(place, { ...press.inks[place], ...change }),
  })
  switch (kind) {
    case 'order swapped':
      return { ...press, inks: ticket.inks.map(({ name }) => press.inks.find((ink) => ink.name === name) ?? wanted) }
    case 'tack too high':
    case 'tack too low':
      return withInk({ tack: legal('tack', (press.inks[place].tack * wanted.tack) / shown('tack', unit)) })
    case 'film too heavy':
    case 'film too thin':
      return withInk({ film: legal('film', (press.inks[place].film * wanted.film) / shown('film', unit)) })
    case 'unit too warm': {
      const excess = shown('temperature', unit) - temperatureAt(ticket.press, wanted)
      const now = temperatureAt(press.press, press.inks[place])
      return withInk({ temperature: legal('temperature', now - excess) })
    }
    case 'soiled unit':
      return withInk({ soiled: 0 })
    case 'water too high': {
      const excess = shown('water', null) - ticket.press.dampening
      const dampening = legal('dampening', press.press.dampening - excess)
      return { ...press, press: { ...press.press, dampening } }
    }
    case 'paper weak':
      return { ...press, paper: { ...press.paper, surfaceStrength: ticket.paper.surfaceStrength } }
    case 'paper too closed':
      return { ...press, paper: { ...press.paper, absorbency: ticket.paper.absorbency } }
    case 'speed too high': {
      const speed = legal('speed', (press.press.speed * ticket.press.speed) / shown('speed', null))
      const interval = legal('interval', (press.press.interval * press.press.speed) / speed)
      return { ...press, press: { ...press.press, speed, interval } }
    }
    case 'interval too short': {
      // As long as the present speed allows between units that stand as the ticket has them.
      const shouldBe = (ticket.press.interval * ticket.press.speed) / shown('speed', null)
      const interval = legal('interval', (press.press.interval * shouldBe) / shown('interval', null))
      return { ...press, press: { ...press.press, interval } }
    }
  }
}

function legal(name: RangeName, value: number): number {
  return Math.min(ranges[name].most, Math.max(ranges[name].least, value))
}
