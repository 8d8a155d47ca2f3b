import { describe, expect, it } from 'vitest'
import { judgeFormula } from '../../src/measure/formula-practice.ts'
import { trapEquations } from '../../src/measure/trap-equations.ts'
import { trapTree } from '../../src/measure/trap-formula.ts'

const seeds = [1, 2, 3, 4, 5]

describe('a right equation', () => {
  it.each(trapEquations)('%s as written, whatever the draw', (equation) => {
    for (const seed of seeds) expect(judgeFormula(trapTree(equation).toString(), equation, seed).kind).toBe('right')
  })

  it.each(['(D3 - D1) / D2 * 100', '100 D3 / D2 - 100 D1 / D2', '(D3-D1)/(D2/100)', '100 / D2 × (D3 − D1)'])(
    '%s',
    (text) => {
      for (const seed of seeds) expect(judgeFormula(text, 'preucil', seed).kind).toBe('right')
    },
  )
})

describe('a wrong equation', () => {
  it.each([
    ['(D3 - D1) / D2', 'formula.slip.share'],
    ['100 (D3 - D2) / D1', 'formula.slip.exchanged'],
    ['100 D3 / D2', 'formula.slip.firstKept'],
    ['100 (D3 - D1) / D1', 'formula.slip.overFirst'],
    ['100 D3 / (D1 + D2)', 'formula.slip.overBoth'],
    [trapTree('ritz').toString(), 'formula.slip.ritz'],
    [trapTree('brunner').toString(), 'formula.slip.brunner'],
  ])('%s is recognised as %s', (text, message) => {
    for (const seed of seeds) {
      expect(judgeFormula(text, 'preucil', seed)).toMatchObject({ kind: 'wrong', slip: { message } })
    }
  })

  it('shows a case with both values: 100 (D3 - D1) / D2 of its own densities', () => {
    const verdict = judgeFormula('42', 'preucil', 1)
    if (verdict.kind !== 'wrong') throw new Error(verdict.kind)
    const { D1, D2, D3, typed, wanted } = verdict.example
    expect(verdict.slip).toBeNull()
    expect(typed).toBe(42)
    expect(wanted).toBeCloseTo((100 * (D3 - D1)) / D2, 10)
  })

  it('shows cases as prints have them: two decimals, the lighter ink first, 50 to 95 % of the second taken', () => {
    for (let seed = 0; seed < 50; seed++) {
      const verdict = judgeFormula('42', 'preucil', seed)
      if (verdict.kind !== 'wrong') throw new Error(verdict.kind)
      const { D1, D2, D3, wanted } = verdict.example
      for (const density of [D1, D2, D3]) expect(Number(density.toFixed(2))).toBe(density)
      expect(D1).toBeGreaterThan(0)
      expect(D1).toBeLessThan(D2)
      // A density rounded to 0.01 moves the trap by up to 0.5 points.
      expect(wanted).toBeGreaterThan(49)
      expect(wanted).toBeLessThan(96)
    }
  })

  it('says so where the typed equation has no value', () => {
    expect(judgeFormula('100 / (D1 - D1)', 'preucil', 1)).toMatchObject({ kind: 'wrong', example: { typed: null } })
  })

  it('passes neither a constant that fits one case nor an equation that is nearly right', () => {
    for (const seed of seeds) {
      expect(judgeFormula('100 (D3 - D1) / D2 + 0.001', 'preucil', seed).kind).toBe('wrong')
    }
  })
})

it('hands on why something cannot be read', () => {
  expect(judgeFormula('cheat()', 'preucil', 1)).toMatchObject({
    kind: 'not read',
    problem: { message: 'formula.unknownFunction' },
  })
})

it('draws the same cases for the same seed, others for another', () => {
  const example = (seed: number) => {
    const verdict = judgeFormula('0', 'ritz', seed)
    return verdict.kind === 'wrong' ? verdict.example : null
  }
  expect(example(7)).toEqual(example(7))
  expect(example(7)).not.toEqual(example(8))
})

it('a formula of twenty functions in one another is judged at once', () => {
  const start = performance.now()
  const verdict = judgeFormula(`${'sqrt('.repeat(20)}D1${')'.repeat(20)}`, 'preucil', 1)
  expect(verdict).toMatchObject({ kind: 'wrong', tex: `${'\\sqrt{'.repeat(20)}D_{1}${'}'.repeat(20)}` })
  // It took 1.6 s, and twice as long for each function more.
  expect(performance.now() - start).toBeLessThan(500)
})
