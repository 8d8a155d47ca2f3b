/** Putting a fault into a job's set-up, and how large faults of each kind are. */
import { ranges } from '../press/ranges.ts'
import type { SetUp } from '../press/setup.ts'
import { temperatureAt } from '../press/setup.ts'
import type { Fault, FaultKind } from './cause.ts'

/**
 * Least and largest size of a fault of each kind; a share of the ticket's value unless another unit is named. All
 * chosen: from what begins to show on a sheet to what still happens in a pressroom.
 */
export const faultSizes: Readonly<Record<FaultKind, { readonly least: number; readonly most: number }>> = {
  /** has no size */
  'order swapped': { least: 1, most: 1 },
  'tack too high': { least: 0.15, most: 0.4 },
  'tack too low': { least: 0.15, most: 0.35 },
  'film too heavy': { least: 0.2, most: 0.6 },
  'film too thin': { least: 0.15, most: 0.4 },
  /** of normal dampening, at every unit */
  'water too high': { least: 0.4, most: 1 },
  /** degC */
  'unit too warm': { least: 6, most: 16 },
  'paper weak': { least: 0.25, most: 0.55 },
  'paper too closed': { least: 0.25, most: 0.6 },
  'speed too high': { least: 0.3, most: 0.9 },
  'interval too short': { least: 0.4, most: 0.85 },
  /** share of foreign ink in the unit's store */
  'soiled unit': { least: 0.06, most: 0.25 },
}

/** The job as it runs with this fault in it; `ticket` stays as it is. */
function withFault(ticket: SetUp, { kind, unit, size }: Fault): SetUp {
  const { inks, paper, press } = ticket
  const at = unit ?? 0
  const ink = inks[at]
  const withInk = (change: Partial<typeof ink>): SetUp => ({ ...ticket, inks: inks.with(at, { ...ink, ...change }) })
  const withPaper = (change: Partial<typeof paper>): SetUp => ({ ...ticket, paper: { ...paper, ...change } })
  const withPress = (change: Partial<typeof press>): SetUp => ({ ...ticket, press: { ...press, ...change } })
  switch (kind) {
    case 'order swapped':
      return { ...ticket, inks: inks.with(at, inks[at + 1]).with(at + 1, ink) }
    case 'tack too high':
      return withInk({ tack: ink.tack * (1 + size) })
    case 'tack too low':
      return withInk({ tack: ink.tack * (1 - size) })
    case 'film too heavy':
      return withInk({ film: ink.film * (1 + size) })
    case 'film too thin':
      return withInk({ film: ink.film * (1 - size) })
    case 'water too high':
      return withPress({ dampening: press.dampening + size })
    case 'unit too warm':
      return withInk({ temperature: temperatureAt(press, ink) + size })
    case 'soiled unit':
      return withInk({ soiled: size })
    case 'paper weak':
      return withPaper({ surfaceStrength: paper.surfaceStrength * (1 - size) })
    case 'paper too closed':
      return withPaper({ absorbency: paper.absorbency * (1 - size) })
    case 'speed too high':
      // The units stand where they stand, so the time between them shortens with it.
      return withPress({ speed: press.speed * (1 + size), interval: legalInterval(press.interval / (1 + size)) })
    case 'interval too short':
      return withPress({ interval: legalInterval(press.interval * (1 - size)), intervalPinned: true })
  }
}

/** s: no press is faster from unit to unit. */
function legalInterval(seconds: number): number {
  return Math.max(ranges.interval.least, seconds)
}

/** Several faults, one after the other. A swapped order comes last, so that the others find their inks. */
export function withFaults(ticket: SetUp, faults: readonly Fault[]): SetUp {
  const swappedLast = [...faults].sort(
    (a, b) => Number(a.kind === 'order swapped') - Number(b.kind === 'order swapped'),
  )
  return swappedLast.reduce(withFault, ticket)
}
