import { describe, expect, it } from 'vitest'
import { aimNames, arrowToAim } from '../../src/measure/hue-arrow.ts'
import { readPatch, stripOf } from '../../src/measure/strip.ts'
import { patchOf } from '../../src/press/patches.ts'
import { runPress } from '../../src/press/run.ts'
import { checkSetUp } from '../press/legal-setups.ts'

const descending = checkSetUp([16, 14, 12, 10])
const strip = stripOf(runPress(descending))
const arrow = (units: number[], set: string) => arrowToAim(strip, readPatch(strip, patchOf(units)), set)

describe('the arrow to a published aim', () => {
  it('starts at the published red of FOGRA39L: L* 47, a* 68, b* 48 within 1 (ISO 12647-2:2004 states these aims)', () => {
    const red = arrow([2, 3], 'FOGRA39L')
    if ('refused' in red) throw new Error(red.refused.message)
    const aims = [47, 68, 48]
    red.aim.forEach((value, axis) => expect(Math.abs(value - aims[axis])).toBeLessThan(1))
    expect(red.sample).not.toEqual(red.aim)
    expect(red.difference).toBeGreaterThan(0)
  })

  it.each(aimNames)('exists for every patch of process inks in %s', (set) => {
    for (const patch of strip.patches)
      expect(arrowToAim(strip, readPatch(strip, patch), set)).toHaveProperty('difference')
  })

  it.each([[[1]], [[2]], [[3]], [[1, 2]], [[1, 3]], [[2, 3]]])(
    'leads from the aim to the sample of units %j, turned by its hue, lengthened by its chroma, raised by its lightness',
    (units) => {
      const found = arrow(units, 'FOGRA39L')
      if ('refused' in found || found.hueTurn === null) throw new Error('no arrow')
      const [L, a, b] = found.aim
      const angle = Math.atan2(b, a) + (Math.PI / 180) * found.hueTurn
      const chroma = Math.hypot(a, b) + found.chromaChange
      const reached = [L + found.lightnessChange, chroma * Math.cos(angle), chroma * Math.sin(angle)]
      reached.forEach((value, axis) => expect(value).toBeCloseTo(found.sample[axis], 9))
    },
  )

  it('has no turn of hue where there is hardly a hue: bare paper, black, the published grey of three inks', () => {
    expect(arrow([], 'FOGRA39L')).toMatchObject({ hueTurn: null })
    expect(arrow([1, 2, 3], 'FOGRA39L')).toMatchObject({ hueTurn: null })
    expect(arrow([0], 'FOGRA39L')).toMatchObject({ hueTurn: null })
  })
})

describe('no arrow', () => {
  it('to a set that is not there, with those that are', () => {
    expect(arrow([1], 'nowhere')).toMatchObject({
      refused: { message: 'aim.unknown', values: { known: aimNames.join(', ') } },
    })
  })

  it('for a spot ink, not even one with the name of a process ink, nor for one without a colour', () => {
    for (const [ink, message] of [
      [{ name: 'moss', colour: '#2f7d4f' }, 'aim.spotInk'],
      [{ name: 'yellow', colour: '#2f7d4f' }, 'aim.spotInk'],
      [{ name: 'silver' }, 'strip.inkWithoutColour'],
    ] as const) {
      const inks = descending.inks.map((each, unit) => (unit === 3 ? { ...each, ...ink } : each))
      const own = stripOf(runPress({ ...descending, inks }))
      expect(arrowToAim(own, readPatch(own, patchOf([1, 3])), 'FOGRA39L')).toMatchObject({ refused: { message } })
      expect(arrowToAim(own, readPatch(own, patchOf([1, 2])), 'FOGRA39L')).toHaveProperty('difference')
    }
  })
})
