/** The unit of a fitted value, as it is written behind the number; empty for a plain number. */
import type { FitParameter } from '../../measure/fit-parameter.ts'
import { say } from '../say.ts'

export function unitOf({ kind }: FitParameter): string {
  if (kind === 'film') return say('bench.unit.um')
  return kind === 'dampening' ? say('bench.timesNormal') : ''
}
