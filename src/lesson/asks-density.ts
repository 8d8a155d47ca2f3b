/** Whether a lesson asks for what only a densitometer tells. */
import type { Lesson } from './lesson.ts'
import type { ReadingName } from './reading.ts'

const metered: readonly ReadingName[] = ['density', 'apparent trap']

export function asksDensity({ steps }: Lesson): boolean {
  const asked = steps.flatMap((step) => (step.kind === 'do' || step.kind === 'expect' ? step.expect : []))
  return asked.some((each) => 'reading' in each && metered.includes(each.reading.what))
}
