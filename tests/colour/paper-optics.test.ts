import { describe, expect, test } from 'vitest'
import { opticalPaperNames, opticsForPaper, seenReflectance } from '../../src/colour/paper-optics.ts'

describe('the optics of a paper', () => {
  test.each([
    ['coated', 'FOGRA39L'],
    ['light-weight coated', 'FOGRA39L'],
    ['uncoated', 'FOGRA47L'],
    ['weak uncoated', 'FOGRA47L'],
    ['newsprint', 'IFRA26S'],
  ])('%s is read by the set that meets %s, said to be reconstructed', (paper, dataSet) => {
    const set = opticsForPaper(paper)
    expect(set.dataSet).toBe(dataSet)
    expect(set.reconstructed).toBe(true)
    expect(set.label).toContain('not measured')
    expect(set.label).toContain(dataSet)
  })

  test('an unknown paper is refused with the papers there are', () => {
    expect(opticalPaperNames).toHaveLength(5)
    expect(() => opticsForPaper('toString')).toThrow(
      new RangeError(`No colour is known for the paper "toString". Known are: ${opticalPaperNames.join(', ')}.`),
    )
  })

  test('a body that turns back nothing shows only the surface, a perfect one all that gets in', () => {
    const light = opticsForPaper('uncoated')
    expect(seenReflectance(light, 0)).toBe(0.01)
    // With r = 1 the internal reflections cancel: what gets in comes out, 0.01 + 0.95.
    expect(seenReflectance(light, 1)).toBeCloseTo(0.96, 12)
  })
})
