import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Neck } from '../../src/view/filament.ts'
import { pull } from '../../src/view/filament.ts'

/** Area of a neck, its edges being straight between its points. */
function inkIn({ heights, widths }: Neck): number {
  let area = 0
  for (let i = 1; i < heights.length; i++) {
    area += 0.5 * (widths[i] + widths[i - 1]) * Math.abs(heights[i] - heights[i - 1])
  }
  return area
}

const px = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true })

test('a film pulled apart keeps its ink at every opening', () => {
  fc.assert(
    fc.property(px(0.05, 60), px(0.05, 60), px(0, 1), px(40, 300), (stays, leaves, share, widest) => {
      const pulled = pull({ stays, leaves }, share * widest, widest)
      const ink = pulled.necks.reduce((sum, neck) => sum + inkIn(neck), pulled.lowerSlab + pulled.upperSlab)
      expect(ink).toBeCloseTo(stays + leaves, 6)
    }),
  )
})

test('once snapped, each side holds what the computation left it', () => {
  fc.assert(
    fc.property(px(0.05, 60), px(0.05, 60), px(0, 1), px(40, 300), (stays, leaves, share, widest) => {
      const pulled = pull({ stays, leaves }, share * widest, widest)
      fc.pre(pulled.snapped && pulled.necks.length === 2)
      const [lower, upper] = pulled.necks
      expect(pulled.lowerSlab + inkIn(lower)).toBeCloseTo(stays, 6)
      expect(pulled.upperSlab + inkIn(upper)).toBeCloseTo(leaves, 6)
    }),
  )
})

test('a film is whole while closed, has snapped when the gap is widest, and its tails have gone back', () => {
  fc.assert(
    fc.property(px(0.05, 60), px(0.05, 60), px(40, 300), (stays, leaves, widest) => {
      const whole = pull({ stays, leaves }, 0, widest)
      expect(whole.snapped).toBe(false)
      expect(Math.min(...whole.necks[0].widths)).toBeCloseTo(1, 9)
      const parted = pull({ stays, leaves }, widest, widest)
      expect(parted).toMatchObject({ snapped: true, necks: [] })
      expect(parted.lowerSlab).toBeCloseTo(stays, 9)
      expect(parted.upperSlab).toBeCloseTo(leaves, 9)
    }),
  )
})

test('a neck grows thinner as the gap opens', () => {
  const waists = [0, 5, 10, 20, 30].map((opening) =>
    Math.min(...pull({ stays: 20, leaves: 20 }, opening, 90).necks[0].widths),
  )
  expect(waists).toEqual([...waists].sort((a, b) => b - a))
  expect(new Set(waists).size).toBe(waists.length)
})
