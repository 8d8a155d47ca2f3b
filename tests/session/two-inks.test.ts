import { expect, test } from 'vitest'
import { liftedShares } from '../../src/press/readings.ts'
import type { Session } from '../../src/session/session.ts'
import { twoInkSession } from '../../src/session/two-inks.ts'

function shares({ results, patch }: Session) {
  const [{ massTrap }] = results.readings.traps
  const [lifted] = liftedShares(results.accounts(patch)[1])
  return { massTrap, lifted }
}

test('the two inks make the point plainly: most of the second stays, and little of it the other way round', () => {
  const session = twoInkSession()
  const { massTrap, lifted } = shares(session)
  expect(massTrap).toBeGreaterThan(0.7)
  expect(lifted).toBeLessThan(0.01)
  expect(session.change({ kind: 'move ink', from: 0, to: 1 })).toEqual([])
  const swapped = shares(session)
  expect(swapped.massTrap).toBeLessThan(0.25)
  expect(swapped.lifted).toBeGreaterThan(0.1)
})
