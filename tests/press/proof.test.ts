import { describe, expect, it } from 'vitest'
import { papers } from '../../src/physics/paper.ts'
import { filmPull } from '../../src/physics/pull.ts'
import { repeatability } from '../../src/physics/repeatability.ts'
import { takenByBarePaper } from '../../src/physics/transfer.ts'
import type { Proof } from '../../src/press/proof.ts'
import { massTrapOf, printProof, proofRanges, weighedRatio, weighProof, weightOfFilm } from '../../src/press/proof.ts'

const cyan = { name: 'cyan', tack: 14, film: 2.2 }
const magenta = { name: 'magenta', tack: 12, film: 2.2 }
const proof: Proof = {
  inks: [cyan, magenta],
  paper: papers.coated,
  speed: 2.5,
  interval: 0.45,
  temperature: 25,
}
const swapped: Proof = { ...proof, inks: [magenta, cyan] }

describe('the wet-on-wet proof', () => {
  it('lays the first ink, and the second alone, as Walker and Fetsko say', () => {
    const { first, secondAlone } = printProof(proof)
    expect(first).toBeCloseTo(takenByBarePaper(papers.coated, 2.2), 4)
    expect(secondAlone).toBeCloseTo(takenByBarePaper(papers.coated, 2.2), 4)
  })

  // The nip by hand: weights F^-m of both planes, contact over both films; half the blanket's film stays where it breaks,
  // and half the free part of the first film leaves where that one breaks. Picking is left out: below 1e-4 here.
  it('moves what the law of one nip moves', () => {
    const { first, firstAfter, secondAfter } = printProof(proof)
    const { contactRate, holdLimit, evenness } = papers.coated
    const conditions = { speed: 2.5, temperature: 25, dampening: 0 }
    const wet = filmPull({
      ...conditions,
      tack: 14,
      thickness: first,
      onSheet: { seconds: 0.45, wetBelow: 0, paper: papers.coated },
    })
    const fresh = filmPull({ ...conditions, tack: 12, thickness: 2.2 })
    const breaks = fresh ** -evenness / (fresh ** -evenness + wet ** -evenness)
    const contact = 1 - Math.exp(-contactRate * (2.2 + first))
    const held = (1 - Math.exp(-contactRate * 2.2)) * holdLimit * (1 - Math.exp(-2.2 / holdLimit))
    expect(Math.abs(secondAfter - contact * breaks * 0.5 * 2.2)).toBeLessThan(1e-3)
    expect(Math.abs(firstAfter - (first - contact * (1 - breaks) * 0.5 * (first - held)))).toBeLessThan(1e-3)
  })

  it('traps better with the stickier ink first than the other way round', () => {
    expect(massTrapOf(printProof(proof))).toBeGreaterThan(massTrapOf(printProof(swapped)) + 0.1)
  })

  it('traps better after a longer interval (setting)', () => {
    expect(massTrapOf(printProof({ ...proof, interval: 3 }))).toBeGreaterThan(massTrapOf(printProof(proof)))
    expect(massTrapOf(printProof({ ...proof, interval: 0.03 }))).toBeLessThan(massTrapOf(printProof(proof)))
  })
})

describe('what can be dialled in', () => {
  it('gives films and a trap at every edge', () => {
    const { film, speed, interval, temperature } = proofRanges
    for (const edge of ['least', 'most'] as const) {
      const inks = [
        { ...cyan, film: film[edge] },
        { ...magenta, film: film[edge] },
      ] as const
      const films = printProof({
        inks,
        paper: papers.newsprint,
        speed: speed[edge],
        interval: interval[edge],
        temperature: temperature[edge],
      })
      expect(films.first).toBeGreaterThan(0)
      expect(films.firstAfter).toBeLessThanOrEqual(films.first)
      expect(massTrapOf(films)).toBeGreaterThan(0)
    }
  })
})

describe('weighing', () => {
  it('weighs 1 um on 100 cm2 as 10 mg', () => {
    expect(weightOfFilm(1)).toBeCloseTo(10, 12)
  })

  // 100 cm2 of 115 g/m2 weigh 1150 mg.
  it('finds a bare strip’s weight, and after each forme as much more as was laid, within its noise', () => {
    const films = printProof(proof)
    const { strip, dry } = weighProof(films, 11)
    const laid = [0, films.first, films.firstAfter + films.secondAfter, 0, films.secondAlone]
    ;[...strip, ...dry].forEach((weight, place) =>
      expect(Math.abs(weight - 1150 - weightOfFilm(laid[place]))).toBeLessThan(5 * repeatability.weighing),
    )
    expect(new Set([strip[0], dry[0], ...weighProof(films, 12).strip.slice(0, 1)]).size).toBe(3)
  })

  it('finds the ratio of the model, within its noise', () => {
    for (const each of [proof, swapped]) {
      const films = printProof(each)
      const ratios = Array.from({ length: 400 }, (_, i) => weighProof(films, 11, i).ratio)
      const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length
      // Each gain is the difference of two weighings: deviation 0.1 x root 2 mg of about 13 mg.
      const one = (repeatability.weighing * Math.SQRT2 * Math.SQRT2) / weightOfFilm(films.secondAlone)
      expect(Math.abs(mean - weighedRatio(films))).toBeLessThan((4 * one) / Math.sqrt(ratios.length))
      ratios.forEach((ratio) => expect(Math.abs(ratio - weighedRatio(films))).toBeLessThan(5 * one))
    }
  })

  it('falls short of the second ink’s own trap by what was lifted of the first', () => {
    const films = printProof(swapped)
    const lifted = films.first - films.firstAfter
    expect(lifted).toBeGreaterThan(0.05)
    expect(massTrapOf(films) - weighedRatio(films)).toBeCloseTo(lifted / films.secondAlone, 12)
  })
})
