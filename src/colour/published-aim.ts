import { publishedAims, type AimPatch, type PublishedAims } from './data/published-aims.ts'
import { processInkNames, type ProcessInkName } from './ink-set.ts'
import type { Lab } from './lab.ts'

const letter: Readonly<Record<ProcessInkName, string>> = { cyan: 'C', magenta: 'M', yellow: 'Y', black: 'K' }

/** The published set of this name, such as FOGRA39L; undefined when none has it. */
export function aimsNamed(name: string): PublishedAims | undefined {
  return publishedAims.find((aims) => aims.name === name)
}

/** The published Lab of solids printed over one another, in whatever order they are named; no ink is the bare paper. */
export function aimOfOverprint(aims: PublishedAims, inks: readonly ProcessInkName[]): Lab {
  const letters = processInkNames.filter((name) => inks.includes(name)).map((name) => letter[name])
  return aims.Lab[letters.length === 0 ? 'paper' : (letters.join('') as AimPatch)]
}
