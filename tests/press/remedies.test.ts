import { describe, expect, it } from 'vitest'
import { paperNames, papers } from '../../src/physics/paper.ts'
import { effectKinds, effectsOf } from '../../src/press/effects.ts'
import { usualInk, usualPress } from '../../src/press/presets.ts'
import { readSheet } from '../../src/press/readings.ts'
import type { RemedyName } from '../../src/press/remedies.ts'
import { remedies, remedyNames, tryRemedy } from '../../src/press/remedies.ts'
import { runPress } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { drills } from '../../src/words/en/drills.ts'
import { problemsOf } from './problems-of.ts'

/** The reversed set, on the first sheet: poor trapping to be helped. */
const poor: SetUp = {
  inks: [10, 12, 14, 16].map((tack, unit) => usualInk(['yellow', 'magenta', 'cyan', 'black'][unit], tack)),
  paper: papers.coated,
  press: usualPress('sheet-fed'),
  reading: 'first',
  seed: 1,
}
/** Inks too sticky for the paper, at web speed: picking to be helped. */
const picking: SetUp = { ...poor, inks: [...poor.inks].reverse(), paper: papers.uncoated, press: usualPress('web') }

const trap = (setUp: SetUp) => Math.min(...readSheet(runPress(setUp)).traps.map(({ massTrap }) => massTrap))
const torn = (setUp: SetUp) => readSheet(runPress(setUp)).worstTorn

describe('remedies', () => {
  it.each(['re-grade', 'reduce tack', 'stiffen first', 'cool first', 'dry between'] as const)(
    'against poor trapping raise the poorest trap: %s',
    (name) => {
      const { setUp, gains } = tryRemedy(poor, name)
      expect(trap(setUp)).toBeGreaterThan(trap(poor))
      expect(gains.map((gain) => gain.name)).toContain('least trap')
    },
  )

  it.each(['slow down', 'stronger paper', 're-grade', 'reduce tack'] as const)(
    'against picking lower it: %s',
    (name) => {
      expect(torn(tryRemedy(picking, name).setUp)).toBeLessThanOrEqual(torn(picking))
    },
  )

  it.each(['stiffen first', 'cool first', 'less film first'] as const)(
    'that pull harder at the paper pick more: %s',
    (name) => {
      const { costs, setUp } = tryRemedy(picking, name)
      expect(torn(setUp)).toBeGreaterThan(torn(picking))
      expect(costs.map((cost) => cost.name)).toContain('most torn')
    },
  )

  it('print light coverage first when told so', () => {
    const inks = poor.inks.map((ink, unit) => ({ ...ink, coverage: [0.9, 0.2, 0.5, 0.1][unit] }))
    const order = remedies['light first'].apply({ ...poor, inks }, 0).inks.map(({ name }) => name)
    expect(order).toEqual(['black', 'magenta', 'cyan', 'yellow'])
  })

  it('re-grade by 2 points from unit to unit and keep the mean', () => {
    expect(remedies['re-grade'].apply(poor, 0).inks.map(({ tack }) => tack)).toEqual([16, 14, 12, 10])
  })

  it('slow down by a quarter, the units standing where they stand', () => {
    const { press } = remedies['slow down'].apply(poor, 0)
    expect(press.speed).toBeCloseTo(0.75 * poor.press.speed, 12)
    expect(press.interval * press.speed).toBeCloseTo(poor.press.interval * poor.press.speed, 12)
  })

  it('bring 15 % more of a later ink, or less of the first, and leave the others alone', () => {
    const films = (name: RemedyName, unit: number) => remedies[name].apply(poor, unit).inks.map(({ film }) => film / 4)
    const near = (values: number[]) => values.map((value) => expect.closeTo(value, 12) as number)
    expect(films('more film', 2)).toEqual(near([1, 1, 1.15, 1]))
    expect(films('less film first', 2)).toEqual(near([0.85, 1, 1, 1]))
  })

  it('take a quarter of the normal water away at every unit that has any, and none from a waterless press', () => {
    const inks = poor.inks.map((ink, unit) => (unit === 2 ? { ...ink, dampening: 1.5 } : ink))
    const drier = remedies['less water'].apply({ ...poor, inks }, 0)
    expect(drier.press.dampening).toBe(0.75)
    expect(drier.inks.map(({ dampening }) => dampening)).toEqual([undefined, undefined, 1.25, undefined])
    const waterless = { ...poor, press: { ...poor.press, waterless: true } }
    expect(remedies['less water'].apply(waterless, 0)).toEqual(waterless)
  })

  it('ask for a unit only where they act on a later ink', () => {
    expect(remedyNames.filter((name) => remedies[name].atLaterUnit).sort()).toEqual(
      ['dry between', 'more film', 'reduce tack'].sort(),
    )
  })

  it.each(remedyNames)('gain only what gets better, and cost only what gets worse: %s', (name) => {
    const { gains, costs } = tryRemedy(picking, name)
    expect(gains.every(({ turn }) => turn === 'better')).toBe(true)
    expect(costs.every(({ turn }) => turn === 'worse')).toBe(true)
  })

  it.each(remedyNames)('keep every set-up legal, over and over: %s', (name: RemedyName) => {
    for (const paper of paperNames) {
      let setUp: SetUp = { ...picking, paper: papers[paper] }
      for (let again = 0; again < 12; again++) setUp = remedies[name].apply(setUp, 3)
      expect(problemsOf(setUp)).toEqual([])
    }
  })

  it.each(remedyNames)('say their cautions first, and a cost that cannot be computed in words: %s', (name) => {
    expect(remedies[name].cautions.at(-1)).toBe('teaching-model')
    expect(drills[`remedy.${name}.cost`].length).toBeGreaterThan(10)
  })

  it('of tack and wash carry the word on solvents', () => {
    for (const name of ['re-grade', 'reduce tack', 'stiffen first'] as const) {
      expect(remedies[name].cautions).toContain('solvents')
    }
  })
})

describe('effects', () => {
  it('are none without a change, and turn round when the change is undone', () => {
    expect(effectsOf(poor, poor).every(({ turn }) => turn === 'same')).toBe(true)
    const there = effectsOf(poor, picking)
    effectsOf(picking, poor).forEach((back, i) => {
      expect(back.before).toBe(there[i].after)
      if (there[i].turn !== 'same') expect(back.turn).toBe(there[i].turn === 'better' ? 'worse' : 'better')
    })
  })

  it('read what the sheet reads', () => {
    const [least] = effectsOf(poor, tryRemedy(poor, 're-grade').setUp)
    expect(least.before).toBe(trap(poor))
    expect(effectKinds['least trap'].unit).toBe('share')
  })
})
