/**
 * A reading as the bench writes it. Whoever reads 1.45 off the bench is told neither that 1.45 is too low for "at least
 * 1.45" nor that it is not what was read, whatever the digits behind it are.
 */
import { percentDecimals } from '../press/percent-decimals.ts'
import type { ReadingName } from './reading.ts'

/** Decimals of those that are not written with two, or as exactly as a small share needs. */
const decimals: Partial<Record<ReadingName, number>> = {
  'mass trap': 0,
  coverage: 0,
  contamination: 1,
  pull: 1,
  'apparent trap': 1,
}
const shares: readonly ReadingName[] = ['lifted', 'picked', 'gave way', 'torn']
const usualDecimals = 2

/** `value` in the reading's own unit. */
export function asShown(value: number, what: ReadingName): number {
  const digits = shares.includes(what) ? percentDecimals(value) : (decimals[what] ?? usualDecimals)
  return Number(value.toFixed(digits))
}
