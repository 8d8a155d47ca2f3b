import { describe, expect, it } from 'vitest'
import { paperNames, papers, wetSurfaceStrength } from '../../src/physics/paper.ts'
import { ranges } from '../../src/press/ranges.ts'

// The model's specification; defaults of a design trial, not published figures.
const specified = {
  coated: [60, 2.5, 0.8, 0.3, 0.8, 4.5],
  'light-weight coated': [50, 2, 1, 0.35, 0.6, 4],
  uncoated: [48, 1.2, 1.6, 0.4, 0.4, 3.8],
  newsprint: [32, 0.8, 2.5, 0.5, 0.3, 3.5],
  'weak uncoated': [26, 1.2, 1.6, 0.4, 0.4, 3.8],
}

describe('the papers supplied', () => {
  it('have the specified strength, contact, hold, setting and evenness', () => {
    for (const name of paperNames) {
      const { surfaceStrength, contactRate, holdLimit, settingGain, settingTime, evenness } = papers[name]
      expect([surfaceStrength, contactRate, holdLimit, settingGain, settingTime, evenness]).toEqual(specified[name])
    }
    expect(paperNames.toSorted()).toEqual(Object.keys(specified).sort())
  })

  it('leave 0.4 of the free film on bare paper, are called by their names and lie in the legal ranges', () => {
    for (const name of paperNames) {
      expect(papers[name].name).toBe(name)
      expect(papers[name].freeSplit).toBe(0.4)
      expect(papers[name].absorbency).toBe(1)
      for (const [key, { least, most }] of Object.entries(ranges)) {
        const value: unknown = Object.entries(papers[name]).find(([own]) => own === key)?.[1]
        if (value === undefined) continue
        expect(value).toBeGreaterThanOrEqual(least)
        expect(value).toBeLessThanOrEqual(most)
      }
    }
  })

  it('grow weaker with water, uncoated ones sooner than coated (published direction)', () => {
    expect(wetSurfaceStrength(papers.coated, 0)).toBe(60)
    // Four normal dampenings: 60 / (1 + 4 x 0.02) = 55.5556; newsprint 32 / (1 + 4 x 0.05) = 26.6667.
    expect(wetSurfaceStrength(papers.coated, 4)).toBeCloseTo(55.5556, 4)
    expect(wetSurfaceStrength(papers.newsprint, 4)).toBeCloseTo(26.6667, 4)
  })
})
