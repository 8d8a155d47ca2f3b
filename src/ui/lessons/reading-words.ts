/** A reading of a lesson and what is told of it, in the page's language: "mass trap of yellow on cyan". */
import type { Finding } from '../../lesson/judge.ts'
import type { ReadingRef } from '../../lesson/reading.ts'
import { say, sayName } from '../say.ts'
import { shownUnit } from './shown-unit.ts'

export function sayReading({ what, of, on, by, in: inks, through }: ReadingRef): string {
  const patch = inks ? sayNames(inks) : undefined
  const none = 'none'
  return say('lesson.reading', {
    what,
    of: of ?? none,
    on: on ?? none,
    by: by ?? none,
    patch: patch ?? none,
    through: through ?? none,
  })
}

/** The values of a finding, as the page's language says them. */
export function inWords(
  values: Readonly<Record<string, string | number>>,
  { expectation, taken }: Pick<Finding, 'expectation' | 'taken'>,
): Record<string, string | number> {
  return {
    ...values,
    ...(typeof values['unit'] === 'string' ? { unit: shownUnit(values['unit']) } : {}),
    ...('reading' in expectation ? { reading: sayReading(expectation.reading) } : {}),
    ...(taken ? { taken: sayReading(taken) } : {}),
    ...('inks' in expectation ? { now: sayNames(String(values['now']).split(', ')) } : {}),
    ...('inks' in expectation ? { aim: sayNames(expectation.inks) } : {}),
  }
}

function sayNames(names: readonly string[]): string {
  return names.map(sayName).join(', ')
}
