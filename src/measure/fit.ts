/**
 * The model fitted to somebody's own press: the chosen values are moved until the densities computed for the settled
 * sheet come as near to those read as they can, by least squares over all patches and all three filters
 * (Levenberg and Marquardt's method, from a library). It goes by steps, so that a page can show them and stop.
 */
import type { DensityFilter, DensityStatus } from '../colour/data/density-weights.ts'
import { densityFilters } from '../colour/density.ts'
import { printsIn, unitsIn } from '../press/patches.ts'
import type { SetUp } from '../press/setup.ts'
import type { Certainty } from './fit-certainty.ts'
import { certaintyOf } from './fit-certainty.ts'
import type { FitParameter } from './fit-parameter.ts'
import { boundsOf, parameterName, valueIn, withParameters } from './fit-parameter.ts'
import type { Compute, FitProgress, Found } from './fit-search.ts'
import { searchNearest, slopeStep, sumOfSquares } from './fit-search.ts'
import type { PressSheet } from './press-sheet.ts'
import type { Refused, Said } from './said.ts'
import { refuse } from './said.ts'
import { colourless, sheetModel } from './sheet-model.ts'

export interface FitTask {
  /** the press as it is believed to be; fitted values start from it */
  readonly setUp: SetUp
  readonly sheet: PressSheet
  /** of the densitometer that read the sheet */
  readonly status: DensityStatus
  readonly parameters: readonly FitParameter[]
}

/** How well the data decide a value: its standard error against the width of its legal range. */
type Decided = 'well' | 'roughly' | 'hardly'

interface FittedValue extends FitParameter {
  readonly value: number
  readonly start: number
  readonly standardError: number
  readonly decided: Decided
  /** the value was stopped by its legal range */
  readonly atBound: boolean
}

interface Residual {
  readonly patch: number
  readonly filter: DensityFilter
  readonly read: number
  readonly computed: number
}

export interface Fit {
  readonly task: FitTask
  /** the set-up with the fitted values */
  readonly setUp: SetUp
  readonly values: readonly FittedValue[]
  readonly residuals: readonly Residual[]
  /** standard deviation of a reading about the model, density; at least a densitometer's last digit */
  readonly deviation: number
  readonly certainty: Certainty
  readonly steps: number
  /** what to keep in mind about this fit */
  readonly cautions: readonly Said[]
}

/** A densitometer's last digit, density: no reading is known better. */
const lastDigit = 0.01
/** Standard error over range up to which a value counts as well, roughly, hardly decided; beyond it is left open. */
const well = 0.02
const roughly = 0.1
const hardly = 0.25
/** Deviation of a reading, density, above which the model is said not to describe this press: some five last digits. */
const poor = 0.05

/** Fits by steps; each yields its progress, and the fit comes last. Refused when the data cannot decide what is asked. */
export function* fitPress(task: FitTask): Generator<FitProgress, Fit | Refused> {
  const refused = cannotStart(task)
  if (refused) return refused
  const { parameters, setUp, sheet, status } = task
  const model = sheetModel(setUp, status)
  const patches = sheet.patches.map(({ patch }) => patch)
  const compute: Compute = (values) =>
    model(withParameters(setUp, parameters, values), patches).flatMap((each) => densityFilters.map((f) => each[f]))
  const read = sheet.patches.flatMap(({ densities }) => densityFilters.map((filter) => densities[filter]))
  const start = parameters.map((parameter) => valueIn(setUp, parameter))
  const found = yield* searchNearest(read, compute, start, parameters.map(boundsOf))
  return judge(task, found, read, compute)
}

/** What rules a fit out before anything is computed. */
function cannotStart({ parameters, setUp, sheet }: FitTask): Refused | null {
  const readings = sheet.patches.length * densityFilters.length
  if (parameters.length === 0) return refuse('fit.nothingToFit')
  if (sheet.inks.length !== setUp.inks.length || sheet.inks.some((ink, unit) => ink !== setUp.inks[unit].name)) {
    return refuse('fit.otherInks', { sheet: sheet.inks.join(', ') })
  }
  const blind = colourless(
    setUp,
    sheet.patches.map(({ patch }) => patch),
  )
  if (blind !== null) return refuse('strip.inkWithoutColour', { ink: setUp.inks[blind].name })
  if (parameters.some(({ kind }) => kind !== 'film') && !sheet.patches.some(({ patch }) => isOverprint(patch, setUp))) {
    return refuse('fit.needsOverprints')
  }
  if (readings <= parameters.length) return refuse('fit.tooFewReadings', { readings, parameters: parameters.length })
  // An ink that no patch prints answers through its traces in the others, which decide nothing either.
  const unread = parameters.filter(
    ({ unit }) => unit !== null && !sheet.patches.some(({ patch }) => printsIn(patch, unit)),
  )
  return unread.length > 0 ? leftOpen(unread, setUp) : null
}

function leftOpen(parameters: readonly FitParameter[], setUp: SetUp): Refused {
  return refuse('fit.leftOpen', { parameters: parameters.map((each) => parameterName(each, setUp)) })
}

/**
 * Solids do answer to what acts on trap, but only through traces of foreign ink carried over: too near to what the
 * reconstructed inks get wrong in hue to decide anything.
 */
function isOverprint(patch: number, setUp: SetUp): boolean {
  return unitsIn(patch, setUp.inks.length).length > 1
}

function judge(task: FitTask, { values, steps }: Found, read: readonly number[], compute: Compute): Fit | Refused {
  const { parameters, setUp, sheet } = task
  const computed = compute(values)
  const freedom = read.length - parameters.length
  const deviation = Math.max(lastDigit, Math.sqrt(sumOfSquares(read, computed) / freedom))
  const certainty = certaintyOf(jacobianAt(parameters, values, compute), deviation)
  const shareOfRange = parameters.map((parameter, i) => {
    const { least, most } = boundsOf(parameter)
    return certainty.standardErrors[i] / (most - least)
  })
  const open = parameters.filter((_, i) => !(shareOfRange[i] <= hardly))
  if (open.length > 0) return leftOpen(open, setUp)
  const fitted = parameters.map((parameter, i): FittedValue => {
    const { least, most } = boundsOf(parameter)
    return {
      ...parameter,
      value: values[i],
      start: valueIn(setUp, parameter),
      standardError: certainty.standardErrors[i],
      decided: shareOfRange[i] <= well ? 'well' : shareOfRange[i] <= roughly ? 'roughly' : 'hardly',
      atBound: values[i] <= least || values[i] >= most,
    }
  })
  return {
    task,
    setUp: withParameters(setUp, parameters, values),
    values: fitted,
    residuals: read.map((density, i) => ({
      patch: sheet.patches[Math.floor(i / densityFilters.length)].patch,
      filter: densityFilters[i % densityFilters.length],
      read: density,
      computed: computed[i],
    })),
    deviation,
    certainty,
    steps,
    cautions: cautionsFor(fitted, deviation, setUp),
  }
}

function cautionsFor(fitted: readonly FittedValue[], deviation: number, setUp: SetUp): Said[] {
  const stopped = fitted.filter(({ atBound }) => atBound).map((each) => parameterName(each, setUp))
  return [
    ...(deviation > poor ? [{ message: 'fit.poor', values: { deviation } } as const] : []),
    ...(stopped.length > 0 ? [{ message: 'fit.atBound', values: { parameters: stopped } } as const] : []),
  ]
}

/** Change of every reading with every value, by differences taken inside the legal range. */
function jacobianAt(parameters: readonly FitParameter[], values: readonly number[], compute: Compute): number[][] {
  const columns = parameters.map((parameter, i) => {
    const { least, most } = boundsOf(parameter)
    const step = slopeStep * (most - least)
    const above = Math.min(most, values[i] + step)
    const below = Math.max(least, values[i] - step)
    const at = (value: number) => compute(values.map((other, j) => (j === i ? value : other)))
    const low = at(below)
    return at(above).map((density, k) => (density - low[k]) / (above - below))
  })
  return columns[0].map((_, reading) => columns.map((column) => column[reading]))
}
