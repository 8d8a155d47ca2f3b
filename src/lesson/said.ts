/** A finding as a message of the catalogue: what the bench showed beside what was asked for. */
import type { LessonKey } from '../words/en/lesson.ts'
import type { Bench } from './bench.ts'
import type { Aim, Finding } from './judge.ts'
import { meets } from './judge.ts'
import { nameOfReading } from './reading.ts'

export interface Said {
  message: LessonKey
  values: Record<string, string | number>
}

/** Tells an expectation that is not met. A question never gives its answer away. */
export function sayFinding({ expectation, value, unit = '', problem, taken }: Finding, { setUp, patch }: Bench): Said {
  const { inks, paper, press, reading } = setUp
  switch (expectation.is) {
    case 'within':
    case 'at least':
    case 'at most': {
      const name = nameOfReading(expectation.reading)
      if (value === undefined) return said('lesson.noReading', { reading: name, problem: problem ?? '' })
      const values = { reading: name, value: asTheBenchShows(value, expectation), unit, aim: expectation.value }
      if (expectation.is === 'within') return said('lesson.within', { ...values, tolerance: expectation.tolerance })
      return said(expectation.is === 'at least' ? 'lesson.atLeast' : 'lesson.atMost', values)
    }
    case 'order': {
      const now = inks.map((ink) => ink.name).filter((name) => expectation.inks.includes(name))
      return said('lesson.order', { now: now.join(', '), aim: expectation.inks.join(', ') })
    }
    case 'patch':
      return said('lesson.patch', { now: patch.join(', '), aim: expectation.inks.join(', ') })
    case 'paper':
      return said('lesson.paper', { now: paper.name, aim: expectation.value })
    case 'kind':
      return said('lesson.kind', { now: press.kind, aim: expectation.value })
    case 'waterless':
      return said('lesson.waterless', { now: water(press.waterless), aim: water(expectation.value) })
    case 'sheet':
      return said('lesson.sheet', {
        now: typeof reading === 'object' ? reading.sheet : reading,
        aim: expectation.value,
      })
    case 'number': {
      const reading = nameOfReading(expectation.reading)
      if (problem !== undefined) return said('lesson.noReading', { reading, problem })
      if (taken) return said('lesson.otherNumber', { reading, taken: nameOfReading(taken) })
      return said('lesson.number', { reading })
    }
    case 'choice':
    case 'sequence':
    case 'diagnosis':
      return said('lesson.answer', {})
  }
}

/** The bench shows whole percent; finer only where the whole number would seem to be what was asked for. */
function asTheBenchShows(value: number, expectation: Aim): number {
  if (expectation.unit !== '%') return value
  const whole = Math.round(value)
  return meets(whole, expectation) ? value : whole
}

function water(waterless: boolean): string {
  return waterless ? 'waterless' : 'dampened'
}

function said(message: LessonKey, values: Said['values']): Said {
  return { message, values }
}
