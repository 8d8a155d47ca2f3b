/** What was learned here, as a file takes it along, and taken up from a file: put together with what is here. */
import type { Bench } from '../lesson/bench.ts'
import { benchOf } from '../lesson/bench.ts'
import { mergeProgress, stepsDone } from '../lesson/merge-progress.ts'
import type { Progress } from '../lesson/progress.ts'
import { readProgress } from '../lesson/progress.ts'
import { checkSetUp } from '../press/check-setup.ts'
import type { KeptLesson, Learning } from './learning.ts'
import { ownIdIn, ownKey } from './learning.ts'
import type { KeptProgress } from './saved.ts'
import { writeSetUp } from './write-setup.ts'

/** Everything kept of lessons; a lesson of one's own, which may share its id with one of the course, is marked. */
export function learnedIn(learning: Learning): KeptProgress[] {
  return learning.lessons.flatMap((key) => {
    const { progress, bench } = learning.lesson(key) ?? {}
    const read = readProgress(progress)
    if (!read) return []
    const isOwn = ownIdIn(key) !== null
    return [{ ...read, ...(isOwn ? { own: true } : {}), ...(bench ? { bench: writeBench(bench) } : {}) }]
  })
}

/** Puts together what is here and what was kept elsewhere; returns what takes that back. */
export function takeUpLearned(learning: Learning, kept: readonly KeptProgress[]): () => void {
  const after: Record<string, KeptLesson | undefined> = {}
  for (const each of kept) {
    const theirs = readProgress(each)
    if (!theirs) continue
    const key = each['own'] === true ? ownKey(theirs.lesson) : theirs.lesson
    const merged = together(after[key] ?? learning.lesson(key), { progress: theirs, bench: readBench(each['bench']) })
    if (merged) after[key] = merged
  }
  const before = Object.fromEntries(Object.keys(after).map((key) => [key, learning.lesson(key)]))
  if (Object.keys(after).length > 0) learning.takeUp(after)
  return () => {
    if (Object.keys(before).length > 0) learning.takeUp(before)
  }
}

/** Undefined where the other adds nothing. The bench belongs to the open step, so the two come from the same side. */
function together(
  here: KeptLesson | undefined,
  theirs: { progress: Progress; bench: Bench | undefined },
): KeptLesson | undefined {
  const own = readProgress(here?.progress)
  if (!here || !own) return theirs
  const progress = mergeProgress(own, theirs.progress)
  if (JSON.stringify(progress) === JSON.stringify(own)) return undefined
  return { progress, bench: stepsDone(theirs.progress) > stepsDone(own) ? theirs.bench : here.bench }
}

function writeBench({ setUp, patch }: Bench): { setUp: unknown; patch: readonly string[] } {
  return { setUp: writeSetUp(setUp), patch }
}

function readBench(written: unknown): Bench | undefined {
  if (typeof written !== 'object' || written === null) return undefined
  const { setUp, patch } = written as { setUp?: unknown; patch?: unknown }
  const checked = checkSetUp(setUp)
  if (!('setUp' in checked)) return undefined
  const names = checked.setUp.inks.map(({ name }) => name)
  const known = Array.isArray(patch) ? names.filter((name) => patch.includes(name)) : []
  return known.length > 0 ? { setUp: checked.setUp, patch: known } : benchOf(checked.setUp)
}
