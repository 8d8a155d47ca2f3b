/** Apparent trap through the whole press model and the reconstructed optics, against what has been published of presses. */
import { describe, expect, it } from 'vitest'
import { colourDifference } from '../../src/colour/colour-difference.ts'
import { hueTurn } from '../../src/colour/lab.ts'
import { aimOfOverprint, aimsNamed } from '../../src/colour/published-aim.ts'
import type { DensityStatus } from '../../src/colour/data/density-weights.ts'
import { trapAt } from '../../src/measure/patch-trap.ts'
import { readPatch, seen, stripOf } from '../../src/measure/strip.ts'
import { papers } from '../../src/physics/paper.ts'
import { patchOf } from '../../src/press/patches.ts'
import { runPress } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { checkSetUp } from '../press/legal-setups.ts'

const [, cyan, magenta, yellow] = [0, 1, 2, 3]
const descending = [16, 14, 12, 10]
const reversed = [10, 12, 14, 16]

/** Preucil percent, mass trap in percent and Lab of red, green or blue. */
function overprint(setUp: SetUp, first: number, second: number, status: DensityStatus = 'T') {
  const strip = stripOf(runPress(setUp))
  const patch = patchOf([first, second])
  const trap = trapAt(strip, patch, status)
  const { colour } = readPatch(strip, patch)
  if (!trap || trap.massTrap === null || 'refused' in trap.apparent || 'refused' in colour)
    throw new Error('this pair has densities')
  return { apparent: trap.apparent.percent.preucil, mass: 100 * trap.massTrap, Lab: colour.Lab }
}

const overprints = [
  { name: 'red', first: magenta, second: yellow, published: 76 },
  { name: 'green', first: cyan, second: yellow, published: 89 },
  { name: 'blue', first: cyan, second: magenta, published: 72 },
]

// Mean of 107 samples from 35 companies, sheet-fed on coated paper: sheet-fed attribute study, TAGA Proceedings 1999 (mark A).
describe('16-14-12-10, sheet-fed on coated paper, settled, status T', () => {
  it.each(overprints)(
    '$name reads within 6 points of the published mean $published %',
    ({ first, second, published }) => {
      expect(Math.abs(overprint(checkSetUp(descending), first, second).apparent - published)).toBeLessThan(6)
    },
  )
})

// FOGRA39L, December 2006: published Lab of its overprints. The films are the model's, foreign ink left out.
describe('16-14-12-10, sheet-fed on coated paper, settled', () => {
  it.each(overprints)('prints $name within dE00 4 of FOGRA39L at the mass trap computed', ({ first, second }) => {
    const strip = stripOf(runPress(checkSetUp(descending)))
    const { mass } = overprint(checkSetUp(descending), first, second)
    const amounts = descending.map((_, unit) => (unit === first ? 1 : unit === second ? mass / 100 : 0))
    const aims = aimsNamed('FOGRA39L')
    if (!aims) throw new Error('FOGRA39L is among the published sets')
    const names = ['black', 'cyan', 'magenta', 'yellow'] as const
    const aim = aimOfOverprint(aims, [names[first], names[second]])
    expect(colourDifference(seen(strip, amounts).Lab, aim)).toBeLessThan(4)
  })
})

// The density formula reads much lower on newsprint than expected: TAGA Proceedings 1986, a new ink-trap formula for newsprint (mark A).
describe.each(['E', 'T'] as const)('newsprint against coated paper, status %s', (status) => {
  const read = (paper: 'coated' | 'newsprint') =>
    overprints.map(({ first, second }) =>
      overprint({ ...checkSetUp(descending), paper: papers[paper] }, first, second, status),
    )
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
  const lower = (by: 'apparent' | 'mass') =>
    mean(read('coated').map((each) => each[by])) - mean(read('newsprint').map((each) => each[by]))

  it('reads lower on the mean of red, green and blue, by more than the mass trap differs', () => {
    expect(lower('apparent')).toBeGreaterThan(0)
    expect(lower('apparent')).toBeGreaterThan(lower('mass'))
  })

  it('reads red lower by far more than its mass trap differs, which is within 5 points', () => {
    const [coated] = read('coated')
    const [newsprint] = read('newsprint')
    expect(Math.abs(coated.mass - newsprint.mass)).toBeLessThan(5)
    expect(coated.apparent - newsprint.apparent).toBeGreaterThan(2 * Math.abs(coated.mass - newsprint.mass))
  })
})

// With K-C-M-Y a failing yellow turns red towards magenta, a failing magenta turns blue towards cyan (mark W).
describe('a failing overprint on the first sheet, reversed order against descending', () => {
  const sheet = (tacks: readonly number[], first: number, second: number) =>
    overprint(checkSetUp(tacks, { reading: 'first' }), first, second)
  const solid = (ink: number) => {
    const { colour } = readPatch(stripOf(runPress(checkSetUp(descending, { reading: 'first' }))), patchOf([ink]))
    if ('refused' in colour) throw new Error('process inks have a colour')
    return colour.Lab
  }

  it.each([
    { name: 'red turns towards magenta as yellow fails', first: magenta, second: yellow },
    { name: 'blue turns towards cyan as magenta fails', first: cyan, second: magenta },
    { name: 'green turns towards cyan as yellow fails', first: cyan, second: yellow },
  ])('$name', ({ first, second }) => {
    const good = sheet(descending, first, second)
    const poor = sheet(reversed, first, second)
    expect(poor.mass).toBeLessThan(good.mass)
    const turn = hueTurn(good.Lab, poor.Lab)
    const towardsFirst = hueTurn(good.Lab, solid(first))
    expect(Math.abs(turn)).toBeGreaterThan(1)
    expect(Math.sign(turn)).toBe(Math.sign(towardsFirst))
  })
})
