import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PatchTrap } from '../../src/measure/patch-trap.ts'
import { trapAt } from '../../src/measure/patch-trap.ts'
import { stripOf } from '../../src/measure/strip.ts'
import { trapFilter } from '../../src/measure/trap-filter.ts'
import { patchOf } from '../../src/press/patches.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import type { Ink, SetUp } from '../../src/press/setup.ts'
import { anySetUp, checkSetUp } from '../press/legal-setups.ts'

const [black, cyan, magenta, yellow] = [0, 1, 2, 3]
const descending = checkSetUp([16, 14, 12, 10])

function trapOf(setUp: SetUp, units: number[], filter?: 'red' | 'green' | 'blue'): PatchTrap {
  const trap = trapAt(stripOf(runPress(setUp)), patchOf(units), 'T', filter)
  if (!trap) throw new Error('a patch of two inks has a trap')
  return trap
}

function percentOf({ apparent }: PatchTrap): number {
  return 'refused' in apparent ? NaN : apparent.percent.preucil
}

function withInk(unit: number, change: Partial<Ink>): SetUp {
  return { ...descending, inks: descending.inks.map((ink, each) => (each === unit ? { ...ink, ...change } : ink)) }
}

describe('the filter', () => {
  it.each([
    { name: 'magenta on cyan', units: [cyan, magenta], filter: 'green' },
    { name: 'yellow on cyan', units: [cyan, yellow], filter: 'blue' },
    { name: 'yellow on magenta', units: [magenta, yellow], filter: 'blue' },
    { name: 'cyan on black', units: [black, cyan], filter: 'red' },
  ])('of $name is complementary to the second ink: $filter', ({ units, filter }) => {
    const { rightFilter, caution } = trapOf(descending, units)
    expect(rightFilter).toMatchObject({ filter, because: { message: 'filter.complementary' } })
    expect(caution).toBeNull()
  })

  it('of a spot ink is the one in which its solid reads highest, and says so', () => {
    expect(trapOf(withInk(yellow, { name: 'moss', colour: '#2f7d4f' }), [cyan, yellow]).rightFilter).toMatchObject({
      filter: 'red',
      because: { message: 'filter.strongest', values: { ink: 'moss' } },
    })
  })

  it('of a spot ink that bears the name of a process ink is that of its own colour', () => {
    const { rightFilter } = trapOf(withInk(yellow, { colour: '#2f7d4f' }), [cyan, yellow])
    expect(rightFilter).toMatchObject({ filter: 'red', because: { message: 'filter.strongest' } })
  })

  it('may be the wrong one, with a caution; magenta on cyan through blue is read against magenta’s weak side', () => {
    const wrong = trapOf(descending, [cyan, magenta], 'blue')
    expect(wrong.caution).toMatchObject({ message: 'filter.wrong', values: { filter: 'blue', right: 'green' } })
    expect(wrong.massTrap).toBe(trapOf(descending, [cyan, magenta]).massTrap)
    expect(percentOf(wrong)).not.toBeCloseTo(percentOf(trapOf(descending, [cyan, magenta])), 1)
  })
})

it('the filter of a process ink without a complementary one, and of any other ink, is that of its highest density', () => {
  const solid = { red: 1.5, green: 1.6, blue: 1.4 }
  expect(trapFilter('black', true, solid).filter).toBe('green')
  expect(trapFilter('yellow', false, solid).filter).toBe('green')
  expect(trapFilter('yellow', true, solid)).toEqual({
    filter: 'blue',
    because: { message: 'filter.complementary', values: { ink: 'yellow', filter: 'blue' } },
  })
})

describe('had the second ink transferred in full', () => {
  it.each([[[cyan, magenta]], [[cyan, yellow]], [[magenta, yellow]], [[cyan, magenta, yellow]]])(
    '%j would read a higher trap than it does, which transferred less',
    (units) => {
      const trap = trapOf(descending, units)
      expect(trap.massTrap).toBeLessThan(1)
      const full = Number(trap.why?.values?.['full'])
      expect(full).toBeGreaterThan(percentOf(trap) + 1)
      // Densities of inks that scatter nothing add up at most.
      expect(full).toBeLessThan(101)
    },
  )
})

describe('where densities tell no trap', () => {
  it('the ink reads next to nothing: yellow through the red filter', () => {
    const { apparent, densities, massTrap, why } = trapOf(descending, [cyan, yellow], 'red')
    expect(apparent).toMatchObject({ refused: { message: 'trap.readsNextToNothing', values: { ink: 'yellow' } } })
    expect(densities?.D2).toBeLessThan(0.1)
    expect(massTrap).toBeGreaterThan(0.5)
    expect(why).toBeNull()
  })

  it('the ink below has taken the light: anything on black', () => {
    expect(trapOf(descending, [black, yellow]).apparent).toMatchObject({ refused: { message: 'trap.noLightLeft' } })
  })

  it('the sheet is dry before the second ink', () => {
    const trap = trapOf(withInk(yellow, { dryBefore: true }), [magenta, yellow])
    expect(trap.apparent).toMatchObject({ refused: { message: 'trap.dryBefore' } })
    expect(trap.massTrap).toBeGreaterThan(0)
  })

  it('but not where only some of what lies below is dry', () => {
    const dried = { ...descending, inks: descending.inks.map((ink, unit) => ({ ...ink, dryBefore: unit === magenta })) }
    expect(trapOf(dried, [cyan, yellow]).apparent).toMatchObject({ refused: { message: 'trap.dryBefore' } })
    expect(percentOf(trapOf(dried, [cyan, magenta, yellow]))).toBeGreaterThan(0)
  })

  it('an ink has no colour, first or second', () => {
    const colourless = withInk(magenta, { name: 'silver' })
    for (const units of [
      [magenta, yellow],
      [cyan, magenta],
    ]) {
      expect(trapOf(colourless, units).apparent).toMatchObject({
        refused: { message: 'strip.inkWithoutColour', values: { ink: 'silver' } },
      })
      expect(trapOf(colourless, units).massTrap).toBeGreaterThan(0)
    }
  })

  it('a patch of one ink or none has no trap at all', () => {
    const strip = stripOf(runPress(descending))
    expect(trapAt(strip, 0, 'T')).toBeNull()
    expect(trapAt(strip, patchOf([cyan]), 'T')).toBeNull()
  })
})

describe('apparent trap and mass trap', () => {
  it('differ even at full transfer, because densities do not add up', () => {
    const { why } = trapOf(descending, [magenta, yellow])
    expect(why).toMatchObject({ message: 'why.densitiesDoNotAddUp' })
    expect(why?.values?.['full']).toBeLessThan(95)
  })

  it('name the ink below where the second unit lifts it: three inks reversed, first sheet', () => {
    const reversed = checkSetUp([10, 12, 14, 16], { reading: 'first' })
    expect(trapOf(reversed, [cyan, magenta, yellow]).why).toMatchObject({ message: 'why.lifted' })
  })

  it('name thin films where the densities read better than the mass: yellow on cyan reversed, first sheet', () => {
    const reversed = checkSetUp([10, 12, 14, 16], { reading: 'first' })
    expect(trapOf(reversed, [cyan, yellow]).why).toMatchObject({ message: 'why.thinFilmsReadDark' })
  })

  it('stand side by side for two inks and for more; the mass trap is the one read off the sheet', () => {
    fc.assert(
      fc.property(anySetUp(2, 3), (drawn) => {
        const inks = drawn.inks.map((ink, unit) => ({ ...ink, name: ['cyan', 'magenta', 'yellow'][unit] }))
        const run = runPress({ ...drawn, inks })
        const strip = stripOf(run)
        for (const { earlier, later, massTrap } of readSheet(run).traps) {
          expect(trapAt(strip, patchOf([earlier, later]), 'T')?.massTrap).toBe(massTrap)
        }
        for (const patch of strip.patches) {
          const apparent = trapAt(strip, patch, 'E')?.apparent
          if (apparent && 'percent' in apparent)
            expect(Object.values(apparent.percent).every(Number.isFinite)).toBe(true)
        }
      }),
      { numRuns: 25 },
    )
  })

  it('do not depend on what the inks are called: a spot ink of the same colour reads the same through the same filter', () => {
    const strip = stripOf(runPress(descending))
    const solid = strip.colours[magenta].solid
    if (!solid) throw new Error('magenta has a colour')
    const renamed = trapOf(withInk(magenta, { name: 'own red', colour: solid }), [cyan, magenta])
    const original = trapOf(descending, [cyan, magenta])
    expect(renamed.filter).toBe(original.filter)
    expect(renamed.massTrap).toBe(original.massTrap)
    // Same Lab, another spectrum: the two read alike, not the same.
    expect(Math.abs(percentOf(renamed) - percentOf(original))).toBeLessThan(5)
  })
})
