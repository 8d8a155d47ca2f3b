import { describe, expect, it } from 'vitest'
import { papers } from '../../src/physics/paper.ts'
import type { EffectName } from '../../src/press/effects.ts'
import { effectKinds, effectsOf } from '../../src/press/effects.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { checkSetUp } from './legal-setups.ts'

const falling = checkSetUp([16, 14, 12, 10], { reading: 'first' })
const rising = checkSetUp([10, 12, 14, 16], { reading: 'first' })
const turns = (before: SetUp, after: SetUp) =>
  Object.fromEntries(effectsOf(before, after).map(({ name, turn }) => [name, turn])) as Record<EffectName, string>

describe('what a change does', () => {
  it('is all for the worse where the order of the tacks is turned round, and for the better the other way', () => {
    const [worse, better] = [turns(falling, rising), turns(rising, falling)]
    for (const name of ['least trap', 'most lifted', 'contamination'] as const) {
      expect(worse[name], name).toBe('worse')
      expect(better[name], name).toBe('better')
    }
    expect(worse.speed).toBe('same')
  })

  it('is worse where more is torn, less is put out, or more ink has to dry', () => {
    const weak = { ...falling, paper: { ...papers.coated, surfaceStrength: 12 } }
    expect(turns(falling, weak)['most torn']).toBe('worse')
    const slow = { ...falling, press: { ...falling.press, speed: 1 } }
    expect(turns(falling, slow).speed).toBe('worse')
    const thick = { ...falling, inks: falling.inks.map((ink) => ({ ...ink, film: 6 })) }
    expect(turns(falling, thick)).toMatchObject({ 'ink laid': 'worse', 'thinnest solid': 'better' })
    expect(turns(thick, falling)).toMatchObject({ 'ink laid': 'better', 'thinnest solid': 'worse' })
  })

  it('is read off the sheet asked for, the contamination off the settled one', () => {
    const [first, settled] = [rising, { ...rising, reading: 'settled' as const }].map((setUp) =>
      readSheet(runPress(setUp)),
    )
    const effects = effectsOf(rising, rising)
    const before = (name: EffectName) => effects.find((effect) => effect.name === name)?.before
    // Unit 4 lifts most of what lies below it (trial of the model), as every account of its nip says.
    expect(before('most lifted')).toBe(Math.max(...first.lifted[3]))
    expect(before('contamination')).toBe(Math.max(...settled.contamination))
    expect(before('contamination')).toBeGreaterThan(0.1)
    expect(before('ink laid')).toBeCloseTo(
      Array.from(first.films[15]).reduce((sum, film) => sum + film, 0),
      12,
    )
    for (const solid of first.films.map((films, patch) => films[Math.log2(patch)]).filter((film) => film > 0))
      expect(before('thinnest solid')).toBeLessThanOrEqual(solid)
    expect(effects.every(({ turn }) => turn === 'same')).toBe(true)
  })

  it('is told in shares, films and speeds', () => {
    expect(
      Object.entries(effectKinds)
        .filter(([, { unit }]) => unit === 'um')
        .map(([name]) => name),
    ).toEqual(['thinnest solid', 'ink laid'])
    expect(effectKinds.speed.unit).toBe('m/s')
  })
})
