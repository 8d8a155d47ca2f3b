/** A drill as plain text, such as "medium-1234" or "hard-7-paper weak", to be carried by a link: all who open it get the same. */
import type { FaultKind } from './cause.ts'
import { faultKinds } from './cause.ts'
import type { DrillRequest } from './drill.ts'
import { levels } from './level.ts'
import { ranges } from '../press/ranges.ts'

export function writeDrill({ level, seed, kind }: DrillRequest): string {
  return [level, String(seed), ...(kind ? [kind] : [])].join('-')
}

/** Reads it back; null when it is no drill. */
export function readDrill(text: string): DrillRequest | null {
  const [levelGiven, seedGiven = '', ...kindGiven] = text.split('-')
  const level = levels.find((each) => each === levelGiven)
  const seed = /^\d{1,10}$/.test(seedGiven) ? Number(seedGiven) : NaN
  if (!level || !(seed <= ranges.seed.most)) return null
  if (kindGiven.length === 0) return { level, seed }
  const kind = faultKinds.find((each: FaultKind) => each === kindGiven.join('-'))
  return kind ? { level, seed, kind } : null
}
