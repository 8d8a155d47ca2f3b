/** The work of a visit as the lessons and drills of the page keep it, and back. */
import { checkSetUp } from '../../press/check-setup.ts'
import type { Work } from '../../report/learning-system/work.ts'
import { readRecord, writeRecord } from '../../session/drill-record.ts'
import { Learning } from '../../session/learning.ts'
import { writeSetUp } from '../../session/write-setup.ts'
import { resume } from '../../lesson/progress.ts'
import { courseLesson } from '../lessons/course-files.ts'

/** What was done of these lessons, and the drills. */
export function workIn(storage: Storage, lessons: readonly string[]): Work {
  const learning = new Learning(storage)
  const found = lessons.flatMap((id): [string, Work['lessons'][string]][] => {
    const kept = learning.lesson(id)
    const progress = resume(courseLesson(id), kept?.progress)
    if (!progress) return []
    const bench = kept?.bench ? { setUp: writeSetUp(kept.bench.setUp), patch: kept.bench.patch } : null
    return [[id, { progress, bench }]]
  })
  const { open } = learning
  return {
    open: lessons.includes(open) ? open : '',
    lessons: Object.fromEntries(found),
    drills: readRecord(storage),
  }
}

export function putWork(storage: Storage, { open, lessons, drills }: Work): void {
  const learning = new Learning(storage)
  const kept = Object.entries(lessons).map(([id, { progress, bench }]) => {
    const checked = bench ? checkSetUp(bench.setUp) : null
    const setUp = checked && 'setUp' in checked ? checked.setUp : null
    return [id, { progress, bench: setUp && bench ? { setUp, patch: bench.patch } : undefined }] as const
  })
  if (kept.length > 0) learning.takeUp(Object.fromEntries(kept))
  if (drills.length > 0) writeRecord(storage, drills)
  if (open !== '') learning.open = open
}
