/** A finding as a message of the catalogue: what the bench showed beside what was asked for. */
import type { LessonKey } from '../words/en/lesson.ts'
import { asShown } from './as-shown.ts'
import type { Bench } from './bench.ts'
import type { Finding } from './judge.ts'

export interface Said {
  message: LessonKey
  /** Numbers and names; what is read, and inks that are a list, are named by whoever knows the page's language. */
  values: Record<string, string | number>
}

/** Of the value asked for: a margin that nobody has to be told of. Chosen so that setting a control to it is enough. */
const smallMargin = 0.02

/** Tells an expectation that is not met. A question never gives its answer away. */
export function sayFinding(finding: Finding, { setUp, patch }: Bench): Said {
  const { expectation, value, unit = '', unread, taken, asShare, rightFromTop, proof } = finding
  const { inks, paper, press, reading } = setUp
  if (unread) return said(unread.message, { ...unread.values })
  switch (expectation.is) {
    case 'within':
    case 'at least':
    case 'at most': {
      const aim = expectation.value
      const values = { value: value === undefined ? '' : asShown(value, expectation.reading.what), unit, aim }
      if (expectation.is !== 'within') {
        return said(expectation.is === 'at least' ? 'lesson.atLeast' : 'lesson.atMost', values)
      }
      const { tolerance } = expectation
      const side = value !== undefined && value < aim ? 'under' : 'over'
      const margin = tolerance <= smallMargin * Math.abs(aim) ? 'small' : 'wide'
      return said('lesson.within', { ...values, side, margin, tolerance })
    }
    case 'order': {
      const now = inks.map((ink) => ink.name).filter((name) => expectation.inks.includes(name))
      return said('lesson.order', { now: now.join(', '), aim: expectation.inks.join(', ') })
    }
    case 'patch': {
      const [now, aim] = [patch.join(', '), expectation.inks.join(', ')]
      return said('lesson.patch', { now, printing: patch.length, aim, asked: expectation.inks.length })
    }
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
    case 'number':
      if (asShare) return said('lesson.inPercent', {})
      return said(taken ? 'lesson.otherNumber' : 'lesson.number', {})
    case 'sequence':
      return rightFromTop === undefined ? said('lesson.answer', {}) : said('lesson.sequence', { right: rightFromTop })
    case 'diagnosis':
      return proof ? said('lesson.proof', { ...proof }) : said('lesson.answer', {})
    case 'choice':
      return said('lesson.answer', {})
  }
}

function water(waterless: boolean): string {
  return waterless ? 'waterless' : 'dampened'
}

function said(message: LessonKey, values: Said['values']): Said {
  return { message, values }
}
