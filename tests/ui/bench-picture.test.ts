import { expect, test } from 'vitest'
import { Results } from '../../src/session/results.ts'
import type { Session } from '../../src/session/session.ts'
import { leaveCells, prepareCells } from '../../src/ui/bench-picture.ts'
import { checkSetUp } from '../press/legal-setups.ts'

const patch = 0b11
const oneStep = () => false

function bench(tack: number) {
  return { results: Results.of({ ...checkSetUp([tack, 12]), seed: 5 }), patch }
}

/** A session as far as cells go, with what else it is given put on its bench later. */
function session(): Session {
  return bench(16) as unknown as Session
}

function turnsUntilDone(of: Session): number {
  let turns = 1
  while (!prepareCells(of, oneStep)) turns++
  return turns
}

test('cells are printed a step at a time where there is time for no more', () => {
  expect(turnsUntilDone(session())).toBeGreaterThan(3)
})

test('a change that overtakes cells under way is printed at once, and the next one in steps again', () => {
  const dragged = session()
  expect(prepareCells(dragged, oneStep)).toBe(false)
  Object.assign(dragged, bench(15))
  expect(prepareCells(dragged, oneStep)).toBe(true)
  Object.assign(dragged, bench(14))
  expect(prepareCells(dragged, oneStep)).toBe(false)
})

test('where the picture was left meanwhile, nothing has been overtaken', () => {
  const left = session()
  expect(prepareCells(left, oneStep)).toBe(false)
  leaveCells(left)
  Object.assign(left, bench(15))
  expect(prepareCells(left, oneStep)).toBe(false)
})
