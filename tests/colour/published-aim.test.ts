import { expect, test } from 'vitest'
import { publishedAims } from '../../src/colour/data/published-aims.ts'
import { aimOfOverprint, aimsNamed } from '../../src/colour/published-aim.ts'

test('overprints are found in whatever order their inks are named', () => {
  const aims = aimsNamed('FOGRA39L')
  if (!aims) throw new Error('FOGRA39L is among the published sets')
  // FOGRA39L, as published.
  expect(aimOfOverprint(aims, ['yellow', 'magenta'])).toEqual([47, 68, 48])
  expect(aimOfOverprint(aims, ['black', 'yellow', 'cyan', 'magenta'])).toEqual([8.71, -0.07, 2.06])
  expect(aimOfOverprint(aims, [])).toEqual([95, 0, -2])
})

test('every set has all 16 patches and names where it comes from', () => {
  for (const aims of publishedAims) {
    expect(Object.keys(aims.Lab)).toHaveLength(16)
    expect(aims.printCondition).not.toBe('')
    expect(aimsNamed(aims.name)).toBe(aims)
  }
  expect(aimsNamed('TR006')?.printCondition).toContain('TR 006')
  expect(aimsNamed('FOGRA 39')).toBeUndefined()
})
