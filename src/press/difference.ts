/** What two set-ups do not have in common: for a table of trials. */
import type { SetUp } from './setup.ts'

export interface Difference {
  /** where: inks.yellow.tack, press.speed, order; an ink that only one of them has is told at inks.yellow */
  path: string
  before: unknown
  after: unknown
}

/** Inks are compared by name, and their order for itself; the seed and the reading count too. */
export function differenceOf(before: SetUp, after: SetUp): Difference[] {
  const names = (setUp: SetUp) => setUp.inks.map(({ name }) => name)
  const byName = (setUp: SetUp) => Object.fromEntries(setUp.inks.map((ink) => [ink.name, ink]))
  const order: Difference[] = []
  const shared = (setUp: SetUp, other: SetUp) => names(setUp).filter((name) => names(other).includes(name))
  if (shared(before, after).join('\n') !== shared(after, before).join('\n')) {
    order.push({ path: 'order', before: names(before), after: names(after) })
  }
  return [...order, ...unlike('', { ...before, inks: byName(before) }, { ...after, inks: byName(after) })]
}

function unlike(path: string, before: unknown, after: unknown): Difference[] {
  if (Object.is(before, after)) return []
  if (!isRecord(before) || !isRecord(after)) {
    return JSON.stringify(before) === JSON.stringify(after) ? [] : [{ path, before, after }]
  }
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])]
  return keys.flatMap((key) => unlike(path === '' ? key : `${path}.${key}`, before[key], after[key]))
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
