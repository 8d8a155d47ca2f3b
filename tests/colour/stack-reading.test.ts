import { describe, expect, test } from 'vitest'
import { inkColour } from '../../src/colour/ink-colour.ts'
import { opticsForPaper } from '../../src/colour/paper-optics.ts'
import { readStack } from '../../src/colour/stack-reading.ts'

const coated = opticsForPaper('coated')
const cyan = inkColour({ name: 'cyan' }, coated)
const colourless = inkColour({ name: 'varnish' }, coated)

describe('reading a stack', () => {
  test('absolute densities are those minus paper and the paper together', () => {
    const print = readStack(coated, [{ ink: cyan, amount: 1 }])
    const bare = readStack(coated, [])
    if (print.Lab === null || bare.Lab === null) throw new Error('cyan and bare paper have a colour')
    const { absoluteDensities, densitiesMinusPaper } = print
    expect(absoluteDensities.T.red - bare.absoluteDensities.T.red).toBeCloseTo(densitiesMinusPaper.T.red, 12)
    for (const density of Object.values(bare.densitiesMinusPaper.E)) expect(density).toBeCloseTo(0, 12)
  })

  test('an ink without a colour leaves the whole stack without one, with the reason', () => {
    const reading = readStack(coated, [
      { ink: cyan, amount: 1 },
      { ink: colourless, amount: 0.3 },
    ])
    expect(reading).toEqual({
      Lab: null,
      reason: 'The ink "varnish" has no colour. Give it one, such as #d4006a, or L*, a*, b*.',
    })
  })

  test('where none of it lies, an ink needs no colour', () => {
    const reading = readStack(coated, [
      { ink: cyan, amount: 1 },
      { ink: colourless, amount: 0 },
    ])
    expect(reading.Lab).not.toBeNull()
  })

  test('an amount that is no amount is refused', () => {
    expect(() => readStack(coated, [{ ink: cyan, amount: -1 }])).toThrow(RangeError)
  })
})
