import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { longestFormula, readFormula } from '../../src/measure/read-formula.ts'

const read = { D1: 0.4, D2: 1.4, D3: 1.42 }

function value(text: string): number {
  const formula = readFormula(text)
  if ('refused' in formula) throw new Error(`${text}: ${formula.refused.message}`)
  return formula.compute(read)
}

function refusal(text: string): string {
  const formula = readFormula(text)
  return 'refused' in formula ? formula.refused.message : 'accepted'
}

describe('what is read', () => {
  it.each([
    ['100 * (D3 - D1) / D2', (100 * 1.02) / 1.4],
    ['100(D3-D1)/D2', (100 * 1.02) / 1.4],
    ['(D3 - D1) ÷ D2 × 100', (100 * 1.02) / 1.4],
    ['100 (d3 − d1) / d2', (100 * 1.02) / 1.4],
    ['100 (D₃ − D₁) / D₂', (100 * 1.02) / 1.4],
    ['10^-D2', 10 ** -1.4],
    ['-D1^2', -(0.4 ** 2)],
    ['+D1 - -D2', 0.4 + 1.4],
    ['log10(100) + ln(exp(3)) + sqrt(16)', 9],
    ['1.5e1', 15],
    ['2^3^2', 512],
  ])('%s', (text, expected) => {
    expect(value(text)).toBeCloseTo(expected, 12)
  })

  it('has no value where it divides by nothing or leaves the numbers', () => {
    expect(Number.isFinite(value('D1 / (D2 - D2)'))).toBe(false)
    expect(Number.isFinite(value('ln(D1 - D2)'))).toBe(false)
  })
})

describe('what is refused', () => {
  it.each([
    ['D1 + D4', { name: 'D4' }],
    [`D1 + ${'x'.repeat(20)}`, { name: 'x'.repeat(20) }],
    [`D1 + ${'x'.repeat(21)}`, { name: `${'x'.repeat(20)}...` }],
    ['D1!', { name: '!' }],
    ['D1(D2)', { name: 'D1' }],
    ['sin(D1)', { name: 'sin' }],
    ['log10()', { name: 'log10' }],
    ['D1'.repeat(longestFormula), { most: longestFormula }],
  ])('%j is named or the limit stated', (text, values) => {
    expect(readFormula(text)).toMatchObject({ refused: { values } })
  })

  it.each([
    ['', 'formula.empty'],
    ['   ', 'formula.empty'],
    ['D1 +', 'formula.unreadableAt'],
    ['(D3 - D1', 'formula.unreadableAt'],
    ['1,4 * D1', 'formula.unreadableAt'],
    ['D1'.repeat(longestFormula), 'formula.tooLong'],
    [`${'('.repeat(60)}D1${')'.repeat(60)}`, 'formula.tooDeep'],
    ['-'.repeat(100) + 'D1', 'formula.tooDeep'],
    ['D4', 'formula.unknownSymbol'],
    ['pi', 'formula.unknownSymbol'],
    ['2 cm', 'formula.unknownSymbol'],
    ['__proto__', 'formula.unknownSymbol'],
    ['constructor', 'formula.unknownSymbol'],
    ['D1(D2)', 'formula.missingTimes'],
    ['log(D1)', 'formula.whichLog'],
    ['log10(D1, 2)', 'formula.oneValue'],
    ['log10()', 'formula.oneValue'],
    ['sin(D1)', 'formula.unknownFunction'],
    ['createUnit("x")', 'formula.unknownFunction'],
    ['parse("1")', 'formula.unknownFunction'],
    ['evaluate("1")', 'formula.unknownFunction'],
    ['import(1)', 'formula.unknownFunction'],
    ['toString(1)', 'formula.unknownFunction'],
    ['hasOwnProperty(1)', 'formula.unknownFunction'],
    ['D1!', 'formula.unknownOperator'],
    ['D1 % D2', 'formula.unknownOperator'],
    ['D1 > D2', 'formula.unknownOperator'],
    ['D1 and D2', 'formula.unknownOperator'],
    ['D1 to D2', 'formula.unknownOperator'],
    ["D1'", 'formula.unknownOperator'],
    ['D1 = 3', 'formula.onlyArithmetic'],
    ['f(x) = x', 'formula.onlyArithmetic'],
    ['D1; D2', 'formula.onlyArithmetic'],
    ['[D1, D2]', 'formula.onlyArithmetic'],
    ['{a: 1}', 'formula.onlyArithmetic'],
    ['1:1000000000', 'formula.onlyArithmetic'],
    ['D1 ? 1 : 2', 'formula.onlyArithmetic'],
    ['"text"', 'formula.onlyArithmetic'],
    ['true', 'formula.onlyArithmetic'],
    ['NaN', 'formula.onlyArithmetic'],
    ['Infinity', 'formula.onlyArithmetic'],
    ['1e999', 'formula.onlyArithmetic'],
    ['D1.constructor', 'formula.onlyArithmetic'],
    ['D1["constructor"]', 'formula.onlyArithmetic'],
    ['log10.constructor("return 1")', 'formula.unknownFunction'],
    ['cos.constructor("return process")()', 'formula.unreadableAt'],
  ])('%s: %s', (text, message) => {
    expect(refusal(text)).toBe(message)
  })

  it('never throws, whatever is typed, and a value it gives is a number', () => {
    const sign = fc.constantFrom(
      ...Array.from('D123()+-*/^.,=[]{}"\'`;:?!%&|<>\\ \n\t@#$_eE0x'),
      'log10',
      'ln',
      'map',
      'unit',
      'cm',
      '𝟏',
      '²',
    )
    const anyText = fc
      .array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 60 })
      .map((codes) => String.fromCharCode(...codes))
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: sign, maxLength: 60 }), anyText), (text) => {
        const formula = readFormula(text)
        if ('compute' in formula) expect(typeof formula.compute(read)).toBe('number')
        else expect(formula.refused.message).toMatch(/^formula\./)
      }),
      { numRuns: 200 },
    )
  })
})
