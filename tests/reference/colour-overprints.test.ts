/** Overprints against published colours and against what the density formula makes of them. */
import { describe, expect, test } from 'vitest'
import { colourDifference } from '../../src/colour/colour-difference.ts'
import type { DensityFilter, DensityStatus } from '../../src/colour/data/density-weights.ts'
import { densitiesMinusPaper } from '../../src/colour/density.ts'
import type { ProcessInkName } from '../../src/colour/ink-set.ts'
import { hueTurn, labOfReflectance, type Lab } from '../../src/colour/lab.ts'
import { inkSets } from '../../src/colour/paper-optics.ts'
import { aimOfOverprint, aimsNamed } from '../../src/colour/published-aim.ts'
import { reflectance } from '../../src/colour/reflectance.ts'

const { coated } = inkSets

type Amounts = Partial<Record<ProcessInkName, number>>

function print(amounts: Amounts): number[] {
  const inks = Object.entries(amounts) as [ProcessInkName, number][]
  return reflectance(
    coated,
    inks.map(([name, amount]) => ({ absorbance: coated.absorbance[name], amount })),
  )
}

function lab(amounts: Amounts): Lab {
  return labOfReflectance(print(amounts))
}

interface Overprint {
  name: 'red' | 'green' | 'blue'
  first: ProcessInkName
  second: ProcessInkName
  /** complementary to the second ink */
  filter: DensityFilter
  /** share of the second ink that transfers, sheet-fed, coated, tacks 16-14-12-10 (trial of the model) */
  massTrap: number
}

const overprints: readonly Overprint[] = [
  { name: 'red', first: 'magenta', second: 'yellow', filter: 'blue', massTrap: 0.86 },
  { name: 'green', first: 'cyan', second: 'yellow', filter: 'blue', massTrap: 0.88 },
  { name: 'blue', first: 'cyan', second: 'magenta', filter: 'green', massTrap: 0.85 },
]

/** Apparent trap in percent, 100 (D3 - D1) / D2 (Preucil 1953). */
function preucil({ first, second, filter }: Overprint, massTrap: number, status: DensityStatus): number {
  const read = (amounts: Amounts) => densitiesMinusPaper(print(amounts), coated.paper, status)[filter]
  const d1 = read({ [first]: 1 })
  return (100 * (read({ [first]: 1, [second]: massTrap }) - d1)) / read({ [second]: 1 })
}

describe.each(overprints)('$name, $second on $first', (overprint) => {
  const { name, first, second, massTrap } = overprint

  test('comes within dE00 4 of FOGRA39L at the mass trap of the model', () => {
    const aims = aimsNamed('FOGRA39L')
    if (!aims) throw new Error('FOGRA39L is among the published sets')
    const aim = aimOfOverprint(aims, [first, second])
    expect(colourDifference(lab({ [first]: 1, [second]: massTrap }), aim)).toBeLessThan(4)
  })

  test('full transfer reads less than 100 % by the density formula', () => {
    // 80, 91, 86 %, status E, coated: worked out by arithmetic from the same optics, apart from this program.
    const worked = { red: 80, green: 91, blue: 86 }[name]
    expect(Math.abs(preucil(overprint, 1, 'E') - worked)).toBeLessThanOrEqual(0.5)
  })

  test('the mass trap of the model reads as it should, status T', () => {
    // 79, 85, 76 %, status T, worked out apart; the published mean of 107 sheets is 76, 89, 72
    // (TAGA Proceedings 1999), from which the model may be 6 points away.
    const worked = { red: 79, green: 85, blue: 76 }[name]
    const published = { red: 76, green: 89, blue: 72 }[name]
    const read = preucil(overprint, massTrap, 'T')
    expect(Math.abs(read - worked)).toBeLessThanOrEqual(0.5)
    expect(Math.abs(read - published)).toBeLessThanOrEqual(6)
  })

  test('when the second ink fails, the hue turns towards the first ink, further the more it fails', () => {
    const full = lab({ [first]: 1, [second]: 1 })
    const towards = Math.sign(hueTurn(full, lab({ [first]: 1 })))
    const turns = [0.8, 0.6, 0.4, 0.2].map((trap) => towards * hueTurn(full, lab({ [first]: 1, [second]: trap })))
    turns.reduce((before, turn) => {
      expect(turn).toBeGreaterThan(before)
      return turn
    }, 0)
  })
})
