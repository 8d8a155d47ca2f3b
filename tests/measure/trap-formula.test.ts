import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readFormula } from '../../src/measure/read-formula.ts'
import { apparentTrap, trapEquations } from '../../src/measure/trap-equations.ts'
import { massTrapTex, texOf, trapTex, trapTree } from '../../src/measure/trap-formula.ts'

describe.each(trapEquations)('%s', (equation) => {
  it('is written as it is computed', () => {
    const formula = readFormula(trapTree(equation).toString())
    if ('refused' in formula) throw new Error(formula.refused.message)
    const density = fc.double({ min: 0.05, max: 2, noNaN: true })
    fc.assert(
      fc.property(fc.record({ D1: density, D2: density, D3: density }), (read) => {
        const trap = apparentTrap(equation, read)
        const computed = 'percent' in trap ? trap.percent : NaN
        expect(Math.abs(formula.compute(read) - computed)).toBeLessThan(1e-9 * Math.max(1, Math.abs(computed)))
      }),
    )
  })

  it('shows its symbols, then every density in its place to two decimals', () => {
    const { symbols, values } = trapTex(equation, { D1: 0.65, D2: 1, D3: 1.4 })
    const places = [
      ['D_{1}', '0.65'],
      ['D_{2}', '1.00'],
      ['D_{3}', '1.40'],
    ]
    const filled = places.reduce((tex, [symbol, number]) => tex.replaceAll(symbol, number), symbols)
    for (const [symbol] of places) expect(symbols).toContain(symbol)
    expect(values).toBe(filled)
  })
})

it('typesets Preucil as a fraction of the added density and the second', () => {
  expect(trapTex('preucil', { D1: 0.65, D2: 1, D3: 1.4 }).values).toBe('100\\cdot\\frac{1.40-0.65}{1.00}')
})

it.each([
  ['sqrt(D1)', '\\sqrt{D_{1}}'],
  ['log10(D2)', '\\log_{10}\\left(D_{2}\\right)'],
  ['ln(D3)', '\\ln\\left(D_{3}\\right)'],
])('typesets a typed %s', (typed, tex) => {
  const formula = readFormula(typed)
  if ('refused' in formula) throw new Error(formula.refused.message)
  expect(texOf(formula.tree)).toBe(tex)
})

it('typesets mass trap with its two films', () => {
  expect(massTrapTex(0.953, 1.118)).toEqual({
    symbols: '100\\cdot\\frac{y_{\\mathrm{wet}}}{y_{\\mathrm{bare}}}',
    values: '100\\cdot\\frac{0.95}{1.12}',
  })
})
