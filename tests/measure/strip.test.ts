import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { referenceFilm, settledOnBarePaper } from '../../src/measure/reference-film.ts'
import { readPatch, stripOf, stripPatches } from '../../src/measure/strip.ts'
import { paperNames, papers } from '../../src/physics/paper.ts'
import { takenByBarePaper } from '../../src/physics/transfer.ts'
import { patchOf } from '../../src/press/patches.ts'
import { runPress } from '../../src/press/run.ts'
import { anySetUp, checkSetUp } from '../press/legal-setups.ts'

describe('the film of a solid', () => {
  it.each(paperNames)('on %s is what a press with one strong-paper unit of 4 um keeps leaving: x = 4 - 2 y', (name) => {
    const film = referenceFilm(papers[name])
    expect(takenByBarePaper(papers[name], 4 - 2 * film)).toBeCloseTo(film, 10)
  })

  it('on coated paper is the 1.118 um that the trial of the model found (mark W)', () => {
    expect(referenceFilm(papers.coated)).toBeCloseTo(1.118, 3)
  })

  it('is what the whole press leaves in the patch of one ink, but for the later units’ touch', () => {
    const { sheet, solidFilm } = stripOf(runPress(checkSetUp([16, 14, 12, 10])))
    expect(Math.abs(sheet.films[patchOf([3])][3] / solidFilm - 1)).toBeLessThan(0.06)
  })

  it('grows with the film on the form roller', () => {
    fc.assert(
      fc.property(fc.constantFrom(...paperNames), fc.double({ min: 1, max: 7.9, noNaN: true }), (name, film) => {
        expect(settledOnBarePaper(papers[name], film + 0.1)).toBeGreaterThan(settledOnBarePaper(papers[name], film))
      }),
    )
  })

  it('belongs to the paper an own one was made from, so that more absorbent paper prints darker', () => {
    const setUp = checkSetUp([16, 14, 12, 10])
    const thirsty = { ...setUp, paper: { ...papers.coated, name: 'thirsty', absorbency: 2 } }
    const density = (run: typeof setUp) => {
      const { colour } = readPatch(stripOf(runPress(run)), patchOf([1]))
      return 'refused' in colour ? NaN : colour.densitiesMinusPaper.T.red
    }
    expect(density(thirsty)).toBeGreaterThan(density(setUp))
  })
})

describe('the patches of a strip', () => {
  it.each([
    [2, 4],
    [3, 8],
    [4, 16],
    [5, 1 + 5 + 10 + 10 + 1],
    [8, 1 + 8 + 28 + 56 + 1],
  ])('of %i inks are %i: paper, one, two and three inks, all', (inks, count) => {
    const patches = stripPatches(inks)
    expect(patches).toHaveLength(count)
    expect(new Set(patches).size).toBe(count)
    expect(patches[0]).toBe(0)
    expect(patches.at(-1)).toBe(2 ** inks - 1)
  })

  it('stand by how many inks they have, those of one size in the order of the units', () => {
    expect(stripPatches(3)).toEqual([0, 1, 2, 4, 3, 5, 6, 7])
  })

  it('name an ink without a colour that came in with others, and how thick, but not where it was printed', () => {
    const setUp = checkSetUp([10, 16])
    const strip = stripOf(
      runPress({ ...setUp, inks: setUp.inks.map((ink, unit) => (unit === 0 ? { ...ink, name: 'mist' } : ink)) }),
    )
    const foreign = strip.sheet.films[patchOf([1])][0]
    expect(foreign).toBeGreaterThan(0)
    expect(readPatch(strip, patchOf([1])).leftOut).toEqual([{ unit: 0, film: foreign }])
    expect(readPatch(strip, patchOf([0, 1])).leftOut).toEqual([])
    expect(readPatch(strip, 0).leftOut).toEqual([])
  })

  it('are read once', () => {
    const strip = stripOf(runPress(checkSetUp([16, 14])))
    expect(readPatch(strip, 3)).toBe(readPatch(strip, 3))
  })

  it('read the paper as the paper', () => {
    const strip = stripOf(runPress(checkSetUp([16, 14, 12, 10])))
    const { colour, films } = readPatch(strip, 0)
    expect(films.every((film) => film === 0)).toBe(true)
    if ('refused' in colour) throw new Error('paper has a colour')
    for (const filter of ['red', 'green', 'blue'] as const) {
      expect(Math.abs(colour.densitiesMinusPaper.E[filter])).toBeLessThan(1e-12)
    }
  })

  it('can all be read for any legal set-up, an ink without a colour refused in words and never thrown', () => {
    fc.assert(
      fc.property(anySetUp(2, 4), fc.nat({ max: 1 }), (setUp, blank) => {
        const inks = setUp.inks.map((ink, unit) => (unit % 2 === blank ? ink : { ...ink, colour: '#a04060' }))
        const strip = stripOf(runPress({ ...setUp, inks }))
        for (const patch of strip.patches) {
          const { colour, units } = readPatch(strip, patch)
          const blind = units.some((unit) => unit % 2 === blank)
          expect('refused' in colour).toBe(blind)
        }
      }),
      { numRuns: 25 },
    )
  })
})
