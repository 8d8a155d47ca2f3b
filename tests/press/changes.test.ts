import { describe, expect, it } from 'vitest'
import { possibleChanges, settledTerms, whatToChange } from '../../src/press/changes.ts'
import { differenceOf } from '../../src/press/difference.ts'
import { allPairs, usualWeights } from '../../src/press/order-score.ts'
import { ranges } from '../../src/press/ranges.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import { papers } from '../../src/physics/paper.ts'
import { usualPress } from '../../src/press/presets.ts'
import { orders } from '../../src/words/en/orders.ts'
import { checkSetUp } from './legal-setups.ts'
import { problemsOf } from './problems-of.ts'

const aim = { overprints: allPairs(4), weights: usualWeights }
const falling = checkSetUp([16, 14, 12, 10])
const webOnWeak = { ...falling, paper: papers['weak uncoated'], press: usualPress('web') }

describe('what to change', () => {
  it('changes one thing at a time', () => {
    for (const { kind, setUp, unit } of possibleChanges(falling)) {
      const paths = differenceOf(falling, setUp).map(({ path }) => path)
      if (kind === 'speed') expect(paths).toEqual(['press.speed', 'press.interval'])
      else if (kind === 'interval') expect(paths).toEqual(['press.interval', 'press.intervalPinned'])
      else if (kind === 'swap') expect(paths).toEqual(['order'])
      else expect(paths).toEqual([expect.stringContaining(kind)])
      expect(unit === null).toBe(['speed', 'interval', 'dampening', 'surfaceStrength'].includes(kind))
    }
  })

  it('tries each both ways, and every two neighbours, and stays inside the legal range', () => {
    // 4 inks x (tack, film) x 2, then speed, interval, dampening, paper x 2, then 3 swaps.
    expect(possibleChanges(falling)).toHaveLength(4 * 2 * 2 + 4 * 2 + 3)
    const atEnds = { ...falling, inks: falling.inks.map((ink) => ({ ...ink, tack: 40, film: 1 })) }
    expect(possibleChanges(atEnds)).toHaveLength(4 + 4 + 4 * 2 + 3)
    const waterless = { ...falling, press: { ...falling.press, waterless: true } }
    expect(possibleChanges(waterless).some(({ kind }) => kind === 'dampening')).toBe(false)
  })

  it('moves a number by as much as it says, and tells the cost of that way', () => {
    for (const { kind, unit, by, setUp, cost } of possibleChanges(falling)) {
      if (kind === 'swap') continue
      const read = ({ inks, press, paper }: typeof falling) =>
        kind === 'tack' || kind === 'film' ? inks[unit ?? NaN][kind] : { ...press, ...paper }[kind]
      expect(read(setUp) - read(falling)).toBeCloseTo(by, 12)
      expect(cost).toBe(`change.${kind}.${by > 0 ? 'up' : 'down'}.cost`)
    }
  })

  it('moves the dampening of every unit that has one of its own along, as far as is legal', () => {
    const inks = falling.inks.map((ink, unit) => ({ ...ink, ...(unit > 1 ? { dampening: [0.5, 2][unit - 2] } : {}) }))
    const damper = possibleChanges({ ...falling, inks }).find(({ kind, by }) => kind === 'dampening' && by > 0)
    expect(damper?.setUp.inks.map(({ dampening }) => dampening)).toEqual([
      undefined,
      undefined,
      0.5 + (damper?.by ?? NaN),
      2,
    ])
  })

  it('is legal wherever it sets out from: at the ends of speed and interval, too', () => {
    for (const kind of ['sheet-fed', 'web'] as const) {
      for (const speed of [ranges.speed.least, 1, 2, ranges.speed.most]) {
        for (const interval of [undefined, ranges.interval.least, ranges.interval.most]) {
          const press = { ...usualPress(kind, speed), ...(interval ? { interval, intervalPinned: true } : {}) }
          if (press.interval < ranges.interval.least || press.interval > ranges.interval.most) continue
          for (const { setUp } of possibleChanges({ ...falling, press })) expect(problemsOf(setUp)).toEqual([])
        }
      }
    }
  })

  it('tells each change’s cost in words, and the cautions that come before it', () => {
    for (const { cost, cautions } of possibleChanges(falling)) {
      expect(orders[cost]).toMatch(/\.$/)
      expect(cautions.at(-1)).toBe('teaching-model')
    }
  })

  it('computes its differences from the settled press', () => {
    const tried = whatToChange(falling, aim)
    const read = (setUp: typeof falling) => {
      const { traps, contamination, worstTorn } = readSheet(runPress(setUp))
      const trap = traps.reduce((sum, { massTrap }) => sum + Math.min(1, massTrap), 0) / traps.length
      return { trap, contamination: Math.max(...contamination), picking: worstTorn }
    }
    const now = read(falling)
    for (const { setUp, differences } of [tried[0], tried[7], tried[tried.length - 1]]) {
      const then = read(setUp)
      for (const name of ['trap', 'contamination', 'picking'] as const) {
        expect(differences[name]).toBeCloseTo(then[name] - now[name], 7)
      }
    }
  })

  it('counts an overprint of three inks as the mean of what its second and its third keep', () => {
    const { films, onBare } = readSheet(runPress(falling))
    const kept = (unit: number) => films[0b111][unit] / onBare[unit]
    const { trap } = settledTerms(falling, { overprints: [[0, 1, 2]], weights: usualWeights })
    expect(trap).toBeCloseTo((kept(1) + kept(2)) / 2, 7)
    // Named in another order it is the same overprint.
    expect(settledTerms(falling, { overprints: [[2, 0, 1]], weights: usualWeights }).trap).toBeCloseTo(trap, 12)
  })

  it('puts the worthiest first: gain of score for each unit of effort', () => {
    const tried = whatToChange(webOnWeak, aim)
    tried.forEach(({ gain, effort, worth }) => expect(worth).toBe(gain / effort))
    expect(tried.map(({ worth }) => worth)).toEqual(tried.map(({ worth }) => worth).toSorted((a, b) => b - a))
    // Paper that picks half away is cured by nothing as well as by stronger paper.
    expect(tried[0]).toMatchObject({ kind: 'surfaceStrength', by: 10 })
    expect(tried[0].differences.picking).toBeLessThan(-0.2)
  })

  it('follows the inks of the chosen overprints through a swap', () => {
    const only = { overprints: [[2, 3]], weights: usualWeights }
    const swap = whatToChange(falling, only).find(({ kind, unit }) => kind === 'swap' && unit === 1)
    const swapped = { ...falling, inks: [0, 2, 1, 3].map((place) => falling.inks[place]) }
    const trap = settledTerms(swapped, { overprints: [[1, 3]], weights: usualWeights }).trap
    expect(swap?.differences.trap).toBeCloseTo(trap - settledTerms(falling, only).trap, 12)
  })
})

describe('what two set-ups do not have in common', () => {
  it('is nothing for the same, whatever their order of writing', () => {
    expect(differenceOf(falling, structuredClone(falling))).toEqual([])
  })

  it('is told by path, inks by name', () => {
    const other = {
      ...falling,
      inks: [
        falling.inks[1],
        { ...falling.inks[0], tack: 15 },
        falling.inks[2],
        { ...falling.inks[3], name: 'orange' },
      ],
      press: { ...falling.press, speed: 3 },
    }
    expect(differenceOf(falling, other)).toEqual([
      { path: 'order', before: ['black', 'cyan', 'magenta', 'yellow'], after: ['cyan', 'black', 'magenta', 'orange'] },
      { path: 'inks.black.tack', before: 16, after: 15 },
      { path: 'inks.yellow', before: falling.inks[3], after: undefined },
      { path: 'inks.orange', before: undefined, after: other.inks[3] },
      { path: 'press.speed', before: 2.5, after: 3 },
    ])
  })
})
