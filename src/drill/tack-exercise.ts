/** Exercises at the tackmeter: read one ink, put a series in printing order, see an ink at the speed of a web press. */
import { seededDraws } from '../physics/random.ts'
import { repeatability } from '../physics/repeatability.ts'
import { laboratoryTackmeter, pullPerTack, readingOfTack, speedFor } from '../physics/tackmeter.ts'
import type { TestInk } from '../physics/tackmeter-run.ts'

export type TackExercise =
  /** asks for the tack of the ink */
  | { readonly kind: 'read'; readonly inks: readonly [TestInk] }
  /** asks for the order in which the inks should print, as places in `inks` */
  | { readonly kind: 'grade'; readonly inks: readonly TestInk[] }
  /** asks for the reading of the ink at the surface speed of a web press, all else at the standard condition */
  | { readonly kind: 'web'; readonly inks: readonly [TestInk]; readonly surfaceSpeed: number }

export const tackExerciseKinds = ['read', 'grade', 'web'] as const
export type TackExerciseKind = (typeof tackExerciseKinds)[number]

/** Tacks to be told apart lie at least this far apart (tack units): chosen, five times the repeatability. */
const stepBetween = 5 * repeatability.tackmeter
/** How many inks are to be graded. */
const seriesLength = 4
/** m/s: a usual web speed. */
const webSpeed = 10

/** The exercise of a seed; the inks' tacks are for the instrument to know, not to be shown. */
export function makeTackExercise(kind: TackExerciseKind, seed: number): TackExercise {
  const draw = seededDraws(seed, exerciseStream + tackExerciseKinds.indexOf(kind))
  const ink = (tack: number): TestInk => ({ tack: Math.round(tack * 10) / 10, volatility: 0.5 + draw() })
  if (kind === 'grade') {
    const lowest = 7 + 3 * draw()
    const steps = Array.from({ length: seriesLength }, () => stepBetween + 1.5 * draw())
    const tacks = steps.map((_, place) => lowest + steps.slice(0, place).reduce((sum, step) => sum + step, 0))
    const shuffled = tacks.map((tack) => ({ tack, lot: draw() })).sort((a, b) => a.lot - b.lot)
    return { kind, inks: shuffled.map(({ tack }) => ink(tack)) }
  }
  const only: [TestInk] = [ink(8 + 10 * draw())]
  return kind === 'read' ? { kind, inks: only } : { kind, inks: only, surfaceSpeed: webSpeed }
}

const exerciseStream = 90

/** The number asked for: a tack, or a reading at web speed. */
function rightReading(exercise: Extract<TackExercise, { kind: 'read' | 'web' }>): number {
  const [{ tack }] = exercise.inks
  if (exercise.kind === 'read') return tack
  const { standard } = laboratoryTackmeter
  return readingOfTack(laboratoryTackmeter, tack, {
    ...standard,
    speed: speedFor(laboratoryTackmeter, exercise.surfaceSpeed),
  })
}

/** How far an answer may be off (tack units): three deviations of one reading, scaled as the reading itself. */
function readingTolerance(exercise: Extract<TackExercise, { kind: 'read' | 'web' }>): number {
  if (exercise.kind === 'read') return 3 * repeatability.tackmeter
  const { standard } = laboratoryTackmeter
  const speed = speedFor(laboratoryTackmeter, exercise.surfaceSpeed)
  const faster = pullPerTack(laboratoryTackmeter, { ...standard, speed }) / pullPerTack(laboratoryTackmeter, standard)
  // Faster rollers dry the ink faster too, so the minute leaves more room.
  return 3 * repeatability.tackmeter * faster ** 2
}

/** The order in which the inks of a series should print: the highest tack first. */
export function rightOrder({ inks }: Extract<TackExercise, { kind: 'grade' }>): number[] {
  return inks.map((_, place) => place).sort((a, b) => inks[b].tack - inks[a].tack)
}

/** Judges a number read, or an order given. */
export function judgeTackExercise(exercise: TackExercise, answer: number | readonly number[]): boolean {
  if (exercise.kind === 'grade') {
    const right = rightOrder(exercise)
    return (
      typeof answer !== 'number' && answer.length === right.length && right.every((place, i) => place === answer[i])
    )
  }
  return typeof answer === 'number' && Math.abs(answer - rightReading(exercise)) <= readingTolerance(exercise)
}
