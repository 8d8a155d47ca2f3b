import { expect, test } from 'vitest'
import type { PaperName } from '../../src/physics/paper.ts'
import { papers } from '../../src/physics/paper.ts'
import type { Oil } from '../../src/physics/pick-test.ts'
import { oilViscosity, pickVelocity } from '../../src/physics/pick-test.ts'

/** Usual pick velocities, m/s (from memory, for ISO 3783), and viscosities of the test oils, Pa s at 23 degC. */
const usual: { paper: PaperName; oil: Oil; least: number; most: number }[] = [
  { paper: 'coated', oil: 'medium', least: 1.5, most: 3.5 },
  { paper: 'light-weight coated', oil: 'medium', least: 1.5, most: 3.5 },
  { paper: 'uncoated', oil: 'medium', least: 0.8, most: 2 },
  { paper: 'newsprint', oil: 'low', least: 1, most: 2 },
]

test.each(usual)('$paper begins to pick at $least to $most m/s with the $oil oil', ({ paper, oil, least, most }) => {
  const velocity = pickVelocity({ paper: papers[paper], oil, wet: false })
  expect(velocity).toBeGreaterThanOrEqual(least)
  expect(velocity).toBeLessThanOrEqual(most)
})

test('weak uncoated paper begins below the range of uncoated', () => {
  expect(pickVelocity({ paper: papers['weak uncoated'], oil: 'medium', wet: false })).toBeLessThan(0.8)
})

test('the oils have their usual viscosities', () => {
  expect(oilViscosity).toEqual({ low: 17.5, medium: 52, high: 110 })
})
