/** Formula practice: a learner types a trap equation, and it is compared by value with the true one on drawn cases. */
import { seededDraws } from '../physics/random.ts'
import { readFormula } from './read-formula.ts'
import type { Said } from './said.ts'
import { isRefused } from './said.ts'
import type { TrapDensities, TrapEquation } from './trap-equations.ts'
import { apparentTrap, trapEquations } from './trap-equations.ts'
import { texOf } from './trap-formula.ts'

export type FormulaVerdict =
  | { readonly kind: 'not read'; readonly problem: Said }
  | {
      readonly kind: 'right'
      /** the formula as it was understood, for typesetting */
      readonly tex: string
    }
  | {
      readonly kind: 'wrong'
      readonly tex: string
      /** the slip that explains every case, when one does */
      readonly slip: Said | null
      /** a case that shows it; `typed` is null where the typed formula has no value */
      readonly example: TrapDensities & { readonly typed: number | null; readonly wanted: number }
    }

/** Cases drawn for one judgement; two different formulas agree on all of them only if they are nearly one. */
const cases = 24
/** Largest difference, in points of percent trap, that still counts as rounding. */
const alike = 1e-6

/** Slips worth naming, each as what it makes of a case. */
const slips: readonly { said: Said; value: (equation: TrapEquation, densities: TrapDensities) => number }[] = [
  { said: { message: 'formula.slip.share' }, value: (equation, densities) => trueValue(equation, densities) / 100 },
  {
    said: { message: 'formula.slip.exchanged' },
    value: (equation, { D1, D2, D3 }) => trueValue(equation, { D1: D2, D2: D1, D3 }),
  },
  { said: { message: 'formula.slip.firstKept' }, value: (_, { D2, D3 }) => (100 * D3) / D2 },
  { said: { message: 'formula.slip.overFirst' }, value: (_, { D1, D3 }) => (100 * (D3 - D1)) / D1 },
  { said: { message: 'formula.slip.overBoth' }, value: (_, { D1, D2, D3 }) => (100 * D3) / (D1 + D2) },
  ...trapEquations.map((other) => ({
    said: { message: `formula.slip.${other}` } as const,
    value: (_: TrapEquation, densities: TrapDensities) => trueValue(other, densities),
  })),
]

/** Judges what was typed for `equation`; the same `seed` draws the same cases. */
export function judgeFormula(text: string, equation: TrapEquation, seed: number): FormulaVerdict {
  const formula = readFormula(text)
  if (isRefused(formula)) return { kind: 'not read', problem: formula.refused }
  const { compute } = formula
  const tex = texOf(formula.tree)
  const drawn = drawCases(seed)
  const agrees = (value: (densities: TrapDensities) => number) => (densities: TrapDensities) =>
    Math.abs(compute(densities) - value(densities)) <= alike
  const right = agrees((densities) => trueValue(equation, densities))
  const example = drawn.find((densities) => !right(densities))
  if (!example) return { kind: 'right', tex }
  const typed = compute(example)
  return {
    kind: 'wrong',
    tex,
    slip: slips.find(({ value }) => drawn.every(agrees((densities) => value(equation, densities))))?.said ?? null,
    example: { ...example, typed: Number.isFinite(typed) ? typed : null, wanted: trueValue(equation, example) },
  }
}

/** Densities as prints have them, to two places: the overprint somewhat below the sum. */
function drawCases(seed: number): TrapDensities[] {
  const draw = seededDraws(seed)
  const between = (least: number, most: number) => Math.round(100 * (least + draw() * (most - least))) / 100
  return Array.from({ length: cases }, () => {
    const D1 = between(0.1, 0.8)
    const D2 = between(0.9, 1.6)
    return { D1, D2, D3: between(D1 + 0.5 * D2, D1 + 0.95 * D2) }
  })
}

/** Of legal densities only, so it never is refused. */
function trueValue(equation: TrapEquation, densities: TrapDensities): number {
  const trap = apparentTrap(equation, densities)
  return isRefused(trap) ? NaN : trap.percent
}
