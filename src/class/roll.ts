/**
 * The learners of a class, each with the newest result handed in. A learner is who has the same id and the same name:
 * two of one name have different ids, and two at one computer have different names.
 */
import type { DrillResult, LessonResult, Result } from '../session/result-format.ts'
import type { DrillDigest } from './drill-digest.ts'
import { drillDigest } from './drill-digest.ts'
import type { LessonDigest } from './lesson-entry.ts'
import { LessonEntry } from './lesson-entry.ts'

/** What the board needs of a result; statements tell no more of it. */
export type HandedDrill = Omit<DrillResult, 'job'>
export type HandedResult = Pick<Result, 'made' | 'learner' | 'lessons'> & { readonly drills: readonly HandedDrill[] }

export interface LearnerDigest {
  readonly key: string
  readonly id: string
  /** empty where not given */
  readonly name: string
  readonly group: string
  readonly made: string
  /** the file it came in */
  readonly source: string
  /** how often this learner's results were handed in; the newest counts */
  readonly files: number
  /** by lesson key */
  readonly lessons: ReadonlyMap<string, LessonDigest>
  readonly drills: readonly DrillDigest[]
}

export class Roll {
  readonly #learners = new Map<string, LearnerDigest>()
  /** by lesson key, in the order of coming */
  readonly lessons = new Map<string, LessonEntry>()

  get learners(): LearnerDigest[] {
    return [...this.#learners.values()]
  }

  add(result: HandedResult, source: string): void {
    const { id, name = '', group = '' } = result.learner
    const key = `${id}\n${plain(name)}`
    const before = this.#learners.get(key)
    const files = (before?.files ?? 0) + 1
    // The one read first counts where two were made at the same moment: they are the same file twice.
    if (before && Date.parse(before.made) >= Date.parse(result.made)) {
      this.#learners.set(key, { ...before, files })
      return
    }
    const lessons = new Map(result.lessons.map((lesson) => [lessonKey(lesson), this.#entry(lesson).digest(lesson)]))
    const drills = result.drills.map(drillDigest)
    this.#learners.set(key, {
      key,
      id,
      name: name.trim(),
      group: group.trim(),
      made: result.made,
      source,
      files,
      lessons,
      drills,
    })
  }

  #entry(lesson: LessonResult): LessonEntry {
    const key = lessonKey(lesson)
    let entry = this.lessons.get(key)
    if (!entry) this.lessons.set(key, (entry = new LessonEntry(lesson)))
    return entry
  }
}

/** A lesson of somebody's own may bear the id of one of the course, and is another lesson. */
function lessonKey({ id, own }: Pick<LessonResult, 'id' | 'own'>): string {
  return own ? `own ${id}` : id
}

/** Names that differ in nothing but capitals and spaces are one name. */
function plain(name: string): string {
  return name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase()
}
