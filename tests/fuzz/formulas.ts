/** Trap formulas as people type them: the true ones spoilt, arithmetic grown at random, and what else a parser knows. */
import fc from 'fast-check'
import { sentence } from '../../src/command/sentence.ts'
import { judgeFormula } from '../../src/measure/formula-practice.ts'
import { trapEquations } from '../../src/measure/trap-equations.ts'
import { finite, spoken, tell } from './hold.ts'
import { anyText, spoiltText, textEdits } from './spoil-text.ts'
import { subject } from './subject.ts'

const trueFormulas = [
  '100*(D3-D1)/D2',
  '100 * D3 / (D1 + D2)',
  '100*(1-10^(-D3+D1))/(1-10^(-D2))',
  'D3-D1',
  '100*log10(D1)',
]

const grown = fc.letrec<{ sum: string }>((again) => ({
  sum: fc.oneof(
    { depthSize: 'small' },
    fc.constantFrom('D1', 'D2', 'D3', 'd1', 'D₁', '100', '.5', '1e308', '0', '1/0', 'x', 'i', 'pi', '2 D1'),
    fc
      .tuple(
        again('sum'),
        fc.constantFrom(
          '+',
          '-',
          '*',
          '/',
          '^',
          '×',
          '÷',
          '−',
          ' ',
          '!',
          '%',
          '==',
          '?',
          ':',
          '=',
          '.',
          ',',
          ' to ',
          ' and ',
        ),
        again('sum'),
      )
      .map((parts) => parts.join('')),
    again('sum').map((inner) => `(${inner})`),
    fc
      .tuple(
        fc.constantFrom(
          'log10',
          'ln',
          'exp',
          'sqrt',
          'log',
          'import',
          'eval',
          'f',
          'constructor',
          'D1',
          'cos',
          'range',
        ),
        again('sum'),
      )
      .map(([name, inner]) => `${name}(${inner})`),
  ),
})).sum

const knownElsewhere = fc.constantFrom(
  'f(x) = x^2',
  'a = 1',
  '[1,2;3,4]',
  '{a: 1}.a',
  'D1.constructor',
  'cos.constructor("return this")()',
  'import({}, {})',
  'createUnit("x")',
  '"text"',
  '5 cm to inch',
  'D1[1]',
  '1:1e9',
  'range(1,1e9)',
  '10^10^10^10',
  '200000!',
  'ones(1e5,1e5)',
  'D1;D2',
  'D1\nD2',
  '# note',
  'true ? 1 : 2',
  '0x1F + 0b1',
  '1e309',
  '9'.repeat(199),
  '-'.repeat(199),
  '('.repeat(199),
  `${'sqrt('.repeat(20)}1${')'.repeat(20)}`,
)

const anyFormula = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.tuple(fc.constantFrom(...trueFormulas), textEdits).map(([text, edits]) => spoiltText(text, edits)),
  },
  { weight: 4, arbitrary: grown },
  { weight: 1, arbitrary: knownElsewhere },
  { weight: 1, arbitrary: fc.tuple(knownElsewhere, textEdits).map(([text, edits]) => spoiltText(text, edits)) },
  { weight: 1, arbitrary: anyText },
)

const typed = fc.record({ text: anyFormula, equation: fc.constantFrom(...trapEquations), seed: fc.nat() })

export const formulas = subject('formulas', 4200, typed, ({ text, equation, seed }) => {
  const verdict = judgeFormula(text, equation, seed)
  if (verdict.kind === 'not read') {
    spoken(sentence(verdict.problem), text)
    return
  }
  if (verdict.tex === '') tell('What was read cannot be shown.')
  if (verdict.kind === 'right') return
  if (verdict.slip) spoken(sentence(verdict.slip), text)
  finite(verdict.example)
})
