/** What the stair looks like, in one sentence. */
import { say, sayNumber } from './say.ts'

export function stairSentence(treads: readonly { name: string; tack: number }[]): string {
  const steps = treads.slice(1).map((tread, index) => ({ tread, before: treads[index], unit: index + 2 }))
  const up = steps.filter(({ tread, before }) => tread.tack > before.tack)
  if (up.length === 0) {
    return steps.every(({ tread, before }) => tread.tack === before.tack)
      ? say('bench.stairLevel')
      : say('bench.stairDown')
  }
  const [{ tread, before, unit }] = up
  const by = sayNumber(tread.tack - before.tack, 0, 2)
  return say('bench.stairUp', { count: up.length, unit, by, before: before.name })
}
