import { describe, expect, it } from 'vitest'
import { solutionOf } from '../../src/command/solution.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { runPress } from '../../src/press/run.ts'

function solve(input: object) {
  const checked = checkSetUp(input)
  if ('problems' in checked)
    throw new Error(checked.problems.map(({ path, message }) => `${path}: ${message}`).join('\n'))
  return solutionOf(runPress(checked.setUp))
}

const process = ['black', 'cyan', 'magenta', 'yellow'].map((name, unit) => ({ name, tack: 16 - 2 * unit }))

describe('the answer of solve', () => {
  const solution = solve({ inks: process })

  it('gives every patch its colour and its densities in both statuses, minus paper and absolute', () => {
    expect(solution.patches).toHaveLength(16)
    for (const { Lab, densities, absoluteDensities } of solution.patches) {
      expect(Lab).toHaveLength(3)
      for (const status of ['E', 'T'] as const) {
        for (const filter of ['red', 'green', 'blue'] as const) {
          expect(densities?.[status][filter]).toBeGreaterThanOrEqual(0)
          expect(absoluteDensities?.[status][filter]).toBeGreaterThan(densities?.[status][filter] ?? NaN)
        }
      }
    }
  })

  it('gives apparent trap by equation and pair, from the densities that it shows: 100 (D3 - D1) / D2 (Preucil, 1953)', () => {
    const read = (...inks: string[]) => {
      const patch = solution.patches.find((each) => each.inks.join() === inks.join())
      return patch?.densities?.T.green ?? NaN
    }
    const [D1, D2, D3] = [read('cyan'), read('magenta'), read('cyan', 'magenta')]
    expect(solution.apparentTrap.filter['magenta on cyan']).toBe('green')
    expect(solution.apparentTrap.preucil['magenta on cyan']).toBeCloseTo((100 * (D3 - D1)) / D2, 3)
    for (const equation of ['preucil', 'ritz', 'brunner'] as const) {
      expect(Object.keys(solution.apparentTrap[equation])).toEqual(Object.keys(solution.massTrap))
    }
  })

  it('gives a reason wherever it gives no apparent trap, and only there', () => {
    const untold = Object.entries(solution.apparentTrap.preucil).filter(([, percent]) => percent === null)
    expect(untold.map(([pair]) => pair)).toEqual(Object.keys(solution.apparentTrap.reason))
    expect(untold.map(([pair]) => pair)).toEqual(['cyan on black', 'magenta on black', 'yellow on black'])
    expect(solution.apparentTrap.reason['yellow on black']).toMatch(/^Densities tell no trap here: .*\.$/)
  })
})

describe('an ink without a colour', () => {
  const solution = solve({ inks: [...process.slice(0, 2), { name: 'silver', tack: 13 }, ...process.slice(2)] })

  it('leaves the patches in which it prints without Lab and with a reason; mass trap stays', () => {
    for (const patch of solution.patches) {
      if (patch.inks.includes('silver'))
        expect(patch).toMatchObject({ Lab: null, reason: expect.stringContaining('silver') as string })
      else expect(patch.Lab).toHaveLength(3)
    }
    expect(solution.apparentTrap.preucil['magenta on silver']).toBeNull()
    expect(solution.apparentTrap.reason['magenta on silver']).toContain('silver')
    expect(solution.massTrap['magenta on silver']).toBeGreaterThan(0)
  })

  it('is named where traces of it, carried over with other inks, are left out of the colour', () => {
    const magenta = solution.patches.find(({ inks }) => inks.join() === 'magenta')
    expect(magenta?.film['silver']).toBeGreaterThan(0)
    expect(magenta).toMatchObject({ colourLeavesOut: ['silver'] })
  })
})

it('reads a spot ink through the filter in which it reads highest', () => {
  const orange = solve({
    inks: [
      { name: 'cyan', tack: 14 },
      { name: 'orange', tack: 12, colour: '#f07800' },
    ],
  })
  const solid = orange.patches.find(({ inks }) => inks.join() === 'orange')?.densities?.T
  const { filter } = orange.apparentTrap
  expect(filter['orange on cyan']).toBe('blue')
  expect(solid?.blue).toBeGreaterThan(Math.max(solid?.red ?? NaN, solid?.green ?? NaN))
})

it('holds nothing that JSON cannot', () => {
  const solution = solve({ inks: process, reading: 'first' })
  expect(JSON.parse(JSON.stringify(solution))).toEqual(solution)
})
