/** The trap equations against figures worked out by hand for five cases (mark W: arithmetic, no press involved). */
import { describe, expect, it } from 'vitest'
import { apparentTrap } from '../../src/measure/trap-equations.ts'

/** Percent to two places: Preucil (1953) as printed; Brunner and Ritz in the form known from memory. */
const cases = [
  { name: 'yellow on magenta, blue filter', D1: 0.65, D2: 1, D3: 1.4, preucil: 75, brunner: 98.22, ritz: 91.35 },
  { name: 'yellow on cyan, blue filter', D1: 0.15, D2: 1, D3: 1.02, preucil: 87, brunner: 97.34, ritz: 96.12 },
  { name: 'magenta on cyan, green filter', D1: 0.4, D2: 1.4, D3: 1.42, preucil: 72.86, brunner: 97.75, ritz: 94.2 },
  { name: 'perfect additivity', D1: 0.4, D2: 1.4, D3: 1.8, preucil: 100, brunner: 100, ritz: 100 },
  { name: 'nothing trapped', D1: 0.4, D2: 1.4, D3: 0.4, preucil: 0, brunner: 61.16, ritz: 0 },
]

describe.each(cases)('$name', ({ D1, D2, D3, ...percent }) => {
  it.each(['preucil', 'brunner', 'ritz'] as const)('by %s', (equation) => {
    const trap = apparentTrap(equation, { D1, D2, D3 })
    expect('percent' in trap && Math.abs(trap.percent - percent[equation])).toBeLessThanOrEqual(0.005 + 1e-9)
  })
})
