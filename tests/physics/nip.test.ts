import { describe, expect, it } from 'vitest'
import { emptyParting, part } from '../../src/physics/nip.ts'
import { papers } from '../../src/physics/paper.ts'
import { pickChance } from '../../src/physics/pick.ts'
import { weakestShares } from '../../src/physics/weakest.ts'

const paper = papers.coated
const surfaceOf = (strength: number) => ({
  paper,
  lnStrength: Math.log(strength),
  pickChance: pickChance(paper.evenness),
})
const strong = surfaceOf(1e6)

/** The weight of films that pull `pulls`, 1 um in all. */
const wet = (...pulls: number[]) => ({
  weight: pulls.reduce((sum, pull) => sum + Math.pow(pull, -paper.evenness), 0),
  thickness: 1,
})

describe('one nip', () => {
  it('breaks the blanket film as often as it is the weakest of all planes', () => {
    const { blanketBreaks, torn } = part(strong, wet(16, 14), 2, Math.log(12), emptyParting())
    expect(blanketBreaks).toBeCloseTo(weakestShares([16, 14, 12], paper.evenness)[2], 12)
    expect(torn).toBeLessThan(1e-40)
  })

  // Half the reference film pulls 2^0.15 as much, twice the film 2^-0.15: 12 tack units pull 13.3148 and 10.8150.
  it.each([
    [1, 13.3148],
    [4, 10.815],
  ])('finds a blanket film of %d um by the pull of its thickness: %d', (film, pull) => {
    const { blanketBreaks } = part(strong, wet(12), film, Math.log(12), emptyParting())
    expect(blanketBreaks).toBeCloseTo(weakestShares([12, pull], paper.evenness)[1], 5)
  })

  it('leaves half the film on wet ink where the blanket film breaks, in the share of the area that touches', () => {
    const parting = part(strong, wet(16), 2, Math.log(12), emptyParting())
    // Contact 1 - e^(-2.5 x 3) = 0.999447.
    expect(parting.contact).toBeCloseTo(0.999447, 6)
    expect(parting.taken).toBeCloseTo(0.5 * parting.contact * parting.blanketBreaks, 14)
    expect(parting.held).toBe(0)
  })

  it('only lifts with an empty blanket, which has no plane that could break', () => {
    const parting = part(strong, wet(16), 0, 0, emptyParting())
    expect([parting.blanketBreaks, parting.taken, parting.held]).toEqual([0, 0, 0])
    expect(parting.contact).toBeCloseTo(1 - Math.exp(-2.5), 12)
  })

  it('does nothing where there is no ink at all, whatever went before', () => {
    const parting = part(strong, wet(16), 2, Math.log(12), emptyParting())
    expect(part(strong, { weight: 0, thickness: 0 }, 0, 0, parting)).toEqual(emptyParting())
  })

  it('tears paper the more, the weaker it is, and then leaves nothing there', () => {
    const strengths = [60, 30, 20, 12, 6, 3]
    const torn = strengths.map((strength) => part(surfaceOf(strength), wet(16), 2, Math.log(12), emptyParting()).torn)
    expect(torn.every((share, i) => i === 0 || share > torn[i - 1])).toBe(true)
    expect(torn[0]).toBeLessThan(1e-5)
    // Pull 11.5 on a strength of 1.1: ten times over, so that whole spots are hard to find.
    expect(part(surfaceOf(1.1), wet(16), 2, Math.log(12), emptyParting()).taken).toBeLessThan(1e-3)
  })

  it('brings the weakest plane of the whole stack to bear on the paper: one more film, less pull', () => {
    const one = part(surfaceOf(14), { weight: 0, thickness: 0 }, 2, Math.log(16), emptyParting()).torn
    const two = part(surfaceOf(14), wet(16), 2, Math.log(16), emptyParting()).torn
    expect(two).toBeLessThan(one)
  })

  it('keeps every share between 0 and 1, at the ends of all ranges', () => {
    for (const evenness of [2, 8]) {
      for (const strength of [5 / 3, 200]) {
        for (const film of [1e-9, 1, 500]) {
          for (const pull of [0.3, 400]) {
            const kind = { ...paper, evenness }
            const surface = { paper: kind, lnStrength: Math.log(strength), pickChance: pickChance(evenness) }
            const below = { weight: Math.pow(pull, -evenness), thickness: 2 }
            for (const films of [below, { weight: 0, thickness: 0 }]) {
              const { contact, torn, blanketBreaks, taken, held } = part(
                surface,
                films,
                film,
                Math.log(30),
                emptyParting(),
              )
              for (const share of [contact, torn, blanketBreaks, taken, held / film]) {
                expect(share).toBeGreaterThanOrEqual(0)
                expect(share).toBeLessThanOrEqual(1)
              }
            }
          }
        }
      }
    }
  })
})
