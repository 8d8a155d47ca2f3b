import { describe, expect, it } from 'vitest'
import { emptyParting, part } from '../../src/physics/nip.ts'
import type { Paper } from '../../src/physics/paper.ts'
import { papers } from '../../src/physics/paper.ts'
import { contactShare, heldFilm, takenByBarePaper } from '../../src/physics/transfer.ts'

const ofPaper = (contactRate: number, holdLimit: number, freeSplit: number): Paper => ({
  ...papers.coated,
  contactRate,
  holdLimit,
  freeSplit,
})

/** Walker and Fetsko (1955), as it stands in the literature. */
function walkerFetsko(k: number, b: number, f: number, x: number): number {
  const held = b * (1 - Math.exp(-x / b))
  return (1 - Math.exp(-k * x)) * (held + f * (x - held))
}

/** What one nip with bare paper that nothing tears leaves on it, from `film` um on the blanket. */
function printedOnBare(paper: Paper, film: number): number {
  const surface = { paper, lnStrength: 0, pickChance: () => 0 }
  return film * part(surface, { weight: 0, thickness: 0 }, film, Math.log(12), emptyParting()).taken
}

describe('what bare, strong paper takes', () => {
  // Arithmetic on the equation, to one decimal of a percent.
  it.each([
    { k: 2, b: 1, f: 0.4, points: [55.1, 67.4, 64.7, 58.9, 50.0, 41.2] },
    { k: 1, b: 2, f: 0.35, points: [36.4, 54.5, 65.8, 65.2, 55.5, 37.6] },
  ])('passes through the worked points at k $k, b $b, f $f', ({ k, b, f, points }) => {
    const paper = ofPaper(k, b, f)
    ;[0.5, 1, 2, 3, 6, 50].forEach((film, i) => {
      expect(Math.abs((100 * takenByBarePaper(paper, film)) / film - points[i])).toBeLessThan(0.0501)
    })
  })

  it('is the equation of Walker and Fetsko to rounding, alone and in a nip', () => {
    for (const paper of Object.values(papers)) {
      const { contactRate, holdLimit, freeSplit } = paper
      for (const film of [0.01, 0.2, 1, 2.5, 8, 40]) {
        const exact = walkerFetsko(contactRate, holdLimit, freeSplit, film)
        expect(Math.abs(takenByBarePaper(paper, film) / exact - 1)).toBeLessThan(1e-13)
        expect(Math.abs(printedOnBare(paper, film) / exact - 1)).toBeLessThan(1e-13)
      }
    }
  })

  it('tends to k x^2 for a thin film, to the share f for a thick one', () => {
    const paper = ofPaper(2, 1, 0.4)
    // Next order of the series: y = k x^2 (1 - x (k/2 + (1 - f) / (2 b)) + ...), so 1e-5 um is within 2e-5 of it.
    expect(Math.abs(takenByBarePaper(paper, 1e-5) / (2 * 1e-10) - 1)).toBeLessThan(2e-5)
    expect(Math.abs(takenByBarePaper(paper, 1e6) / 1e6 - 0.4)).toBeLessThan(1e-6)
  })

  it('rises steeply, peaks before contact is complete, then falls (published shape)', () => {
    const paper = papers.coated
    const films = Array.from({ length: 600 }, (_, i) => 0.02 * (i + 1))
    const shares = films.map((film) => takenByBarePaper(paper, film) / film)
    const peak = shares.indexOf(Math.max(...shares))
    expect(contactShare(paper, films[peak], 0)).toBeLessThan(0.99)
    expect(shares.every((share, i) => i === 0 || (i <= peak ? share > shares[i - 1] : share < shares[i - 1]))).toBe(
      true,
    )
  })

  it('holds more at once the more it absorbs, and at most its limit', () => {
    const paper = ofPaper(2, 1.5, 0.4)
    expect(heldFilm({ ...paper, absorbency: 2 }, 100)).toBeCloseTo(3, 12)
    expect(heldFilm({ ...paper, absorbency: 2 }, 1)).toBeGreaterThan(heldFilm(paper, 1))
    expect(heldFilm(paper, 1)).toBeLessThan(1)
  })

  it('touches as much with wet ink below as with that ink on the blanket', () => {
    expect(contactShare(papers.newsprint, 0.7, 0.4)).toBe(contactShare(papers.newsprint, 0.7 + 0.4, 0))
    expect(contactShare(papers.newsprint, 0, 0)).toBe(0)
  })
})
