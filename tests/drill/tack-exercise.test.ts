import { describe, expect, it } from 'vitest'
import { judgeTackExercise, makeTackExercise, rightOrder, tackExerciseKinds } from '../../src/drill/tack-exercise.ts'
import { laboratoryTackmeter, speedFor } from '../../src/physics/tackmeter.ts'
import type { TestInk } from '../../src/physics/tackmeter-run.ts'
import { meterInk, readNeedle, stepTackmeter, tackmeterRanges } from '../../src/physics/tackmeter-run.ts'

/** Reads an ink as a careful learner does: the standard procedure, at this speed, one reading after a minute. */
function measured(ink: TestInk, seed: number, speed = laboratoryTackmeter.standard.speed): number {
  const { volume, temperature, seconds } = laboratoryTackmeter.standard
  const start = meterInk(laboratoryTackmeter, volume, temperature)
  return readNeedle(
    laboratoryTackmeter,
    stepTackmeter(laboratoryTackmeter, ink, start, { speed, temperature }, seconds),
    seed,
    0,
  )
}

const seeds = Array.from({ length: 60 }, (_, seed) => seed)

describe('exercises at the tackmeter', () => {
  it('are the same for one seed', () => {
    for (const kind of tackExerciseKinds) {
      expect(makeTackExercise(kind, 8)).toEqual(makeTackExercise(kind, 8))
      expect(makeTackExercise(kind, 8)).not.toEqual(makeTackExercise(kind, 9))
    }
  })

  it('are solved by measuring: one ink read', () => {
    const solved = seeds.filter((seed) => {
      const exercise = makeTackExercise('read', seed)
      return judgeTackExercise(exercise, measured(exercise.inks[0], seed))
    })
    // One reading in 370 lies beyond three deviations.
    expect(solved.length).toBeGreaterThanOrEqual(58)
  })

  it('are solved by measuring: a series graded', () => {
    const solved = seeds.filter((seed) => {
      const exercise = makeTackExercise('grade', seed)
      const readings = exercise.inks.map((ink, place) => measured(ink, 100 * seed + place))
      const order = readings.map((_, place) => place).sort((a, b) => readings[b] - readings[a])
      return judgeTackExercise(exercise, order)
    })
    // Two neighbours 5 deviations apart change places in one case of 5000.
    expect(solved.length).toBeGreaterThanOrEqual(59)
  })

  it('are solved by measuring: an ink at web speed', () => {
    const speed = speedFor(laboratoryTackmeter, 10)
    expect(speed).toBeLessThanOrEqual(tackmeterRanges.speed.most)
    const solved = seeds.filter((seed) => {
      const exercise = makeTackExercise('web', seed)
      return judgeTackExercise(exercise, measured(exercise.inks[0], seed, speed))
    })
    expect(solved.length).toBeGreaterThanOrEqual(57)
  })

  it('refuse an answer far off, an order the wrong way round and an answer of the wrong sort', () => {
    const read = makeTackExercise('read', 3)
    expect(judgeTackExercise(read, read.inks[0].tack + 1)).toBe(false)
    expect(judgeTackExercise(read, [0])).toBe(false)
    const grade = makeTackExercise('grade', 3)
    if (grade.kind !== 'grade') throw new Error('not a series')
    const order = rightOrder(grade)
    expect(judgeTackExercise(grade, order)).toBe(true)
    expect(judgeTackExercise(grade, order.toReversed())).toBe(false)
    expect(judgeTackExercise(grade, order.slice(1))).toBe(false)
    expect(judgeTackExercise(grade, 12)).toBe(false)
    // At web speed an ink reads more than its tack.
    const web = makeTackExercise('web', 3)
    expect(judgeTackExercise(web, web.inks[0].tack)).toBe(false)
  })
})
