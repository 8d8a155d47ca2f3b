/**
 * What a learner has done, kept in this browser: one entry for each lesson, so that two tabs with two lessons never write
 * over each other, and one for each lesson of one's own. Where the browser keeps nothing, all of it lives until the page
 * is closed, and `keeps` says so.
 */
import * as v from 'valibot'
import type { Bench } from '../lesson/bench.ts'
import { benchOf } from '../lesson/bench.ts'
import type { Progress } from '../lesson/progress.ts'
import { checkSetUp } from '../press/check-setup.ts'
import type { Session } from './session.ts'
import { writeSetUp } from './write-setup.ts'

/** What of the browser's storage is needed. */
export type LearningStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>

const entrySchema = v.object({
  /** read by lesson/progress.ts, which knows what fits the lesson */
  progress: v.unknown(),
  setUp: v.unknown(),
  patch: v.array(v.string()),
})

const prefix = 'tackstair lesson '
const ownPrefix = 'tackstair own lesson '
const nameKey = 'tackstair learner'
const groupKey = 'tackstair group'
const learnerKey = 'tackstair learner id'
const writingKey = 'tackstair lesson being written'
const openKey = 'tackstair open lesson'

export interface KeptLesson {
  progress: unknown
  /** the bench as the learner left it; undefined where it can no longer be read */
  bench: Bench | undefined
}

export class Learning {
  /** how often progress has come from elsewhere, such as a file; a lesson that was open before then has to open anew */
  taken = 0
  readonly #storage: LearningStorage | null
  /** what was written in this page, so that a storage that forgets loses nothing before the page is closed */
  readonly #here = new Map<string, string | null>()
  readonly #listeners = new Set<() => void>()
  #keeps: boolean

  constructor(storage: LearningStorage | null) {
    this.#storage = storage
    this.#keeps = storage !== null
  }

  /** Whether the browser has taken everything so far. */
  get keeps(): boolean {
    return this.#keeps
  }

  /** `key` is the id of a lesson of the course, or `ownKey` of another. */
  lesson(key: string): KeptLesson | undefined {
    const parsed = v.safeParse(entrySchema, parse(this.#read(prefix + key)))
    if (!parsed.success) return undefined
    const { progress, setUp, patch } = parsed.output
    const checked = checkSetUp(setUp)
    if (!('setUp' in checked)) return { progress, bench: undefined }
    const names = checked.setUp.inks.map(({ name }) => name)
    const known = patch.filter((name) => names.includes(name))
    return { progress, bench: known.length > 0 ? { setUp: checked.setUp, patch: known } : benchOf(checked.setUp) }
  }

  keep(key: string, progress: Progress, { setUp, patch }: Bench): void {
    this.#write(prefix + key, JSON.stringify({ progress, setUp: writeSetUp(setUp), patch }))
  }

  /** Keys of the lessons of which anything is kept. */
  get lessons(): string[] {
    const keys = [...new Set([...this.#storedKeys(), ...this.#here.keys()])].filter((key) => key.startsWith(prefix))
    return keys.map((key) => key.slice(prefix.length)).filter((key) => this.lesson(key) !== undefined)
  }

  /** Keys of the lessons of which something is kept that cannot be read. */
  get unreadable(): string[] {
    const keys = this.#storedKeys().filter((key) => key.startsWith(prefix) && key !== writingKey)
    return keys.map((key) => key.slice(prefix.length)).filter((key) => this.lesson(key) === undefined)
  }

  /** Keeps, or forgets, several lessons at once in place of what was there. */
  takeUp(lessons: Readonly<Record<string, KeptLesson | undefined>>): void {
    for (const [key, lesson] of Object.entries(lessons)) {
      const { bench, progress } = lesson ?? {}
      const { setUp, patch } = bench
        ? { setUp: writeSetUp(bench.setUp), patch: bench.patch }
        : { setUp: null, patch: [] }
      this.#write(prefix + key, lesson ? JSON.stringify({ progress, setUp, patch }) : null)
    }
    this.taken++
    this.#tell()
  }

  forget(key: string): void {
    this.#write(prefix + key, null)
  }

  /** Texts of the lessons that were dropped on the page or written there, by id. */
  get own(): Readonly<Record<string, string>> {
    const keys = new Set([...this.#storedKeys(), ...this.#here.keys()])
    const found = [...keys].flatMap((key): [string, string][] => {
      const text = key.startsWith(ownPrefix) ? this.#read(key) : null
      return text === null ? [] : [[key.slice(ownPrefix.length), text]]
    })
    return Object.fromEntries(found.sort(([one], [other]) => one.localeCompare(other)))
  }

  keepOwn(id: string, text: string): void {
    this.#write(ownPrefix + id, text)
  }

  forgetOwn(id: string): void {
    this.forget(ownKey(id))
    this.#write(ownPrefix + id, null)
  }

  /** As the learner wants to be called on a results sheet; empty where not given. */
  get name(): string {
    return this.#read(nameKey) ?? ''
  }

  set name(name: string) {
    this.#write(nameKey, name === '' ? null : name)
  }

  /** The class or course a learner belongs to, as typed; empty where not given. */
  get group(): string {
    return this.#read(groupKey) ?? ''
  }

  set group(group: string) {
    this.#write(groupKey, group === '' ? null : group)
  }

  /** What tells this browser's learner from others of the same name; `draw` makes it the first time. */
  learnerId(draw: () => string): string {
    const kept = this.#read(learnerKey)
    if (kept !== null) return kept
    const drawn = draw()
    this.#write(learnerKey, drawn)
    return drawn
  }

  /** Text of the lesson being written; empty where there is none. */
  get writing(): string {
    return this.#read(writingKey) ?? ''
  }

  set writing(text: string) {
    this.#write(writingKey, text === '' ? null : text)
  }

  /** Key of the lesson that is open; empty where the list is. */
  get open(): string {
    return this.#read(openKey) ?? ''
  }

  set open(key: string) {
    this.#write(openKey, key === '' ? null : key)
  }

  /** Calls `listener` after every change; returns what ends that. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  #read(key: string): string | null {
    const here = this.#here.get(key)
    if (here !== undefined && (!this.#keeps || here === null)) return here
    return this.#attempt((storage) => storage.getItem(key)) ?? here ?? null
  }

  #write(key: string, text: string | null): void {
    this.#here.set(key, text)
    this.#attempt((storage) => {
      if (text === null) storage.removeItem(key)
      else storage.setItem(key, text)
      return null
    })
    this.#tell()
  }

  #tell(): void {
    for (const listener of this.#listeners) listener()
  }

  #storedKeys(): string[] {
    const keys = this.#attempt((storage) => Array.from({ length: storage.length }, (_, at) => storage.key(at) ?? ''))
    return keys ?? []
  }

  /** A storage that is blocked or full throws; from then on the page says that nothing is kept. */
  #attempt<Result>(touch: (storage: LearningStorage) => Result): Result | null {
    if (!this.#storage) return null
    try {
      return touch(this.#storage)
    } catch (error) {
      if (!(error instanceof Error)) throw error
      this.#keeps = false
      return null
    }
  }
}

const ownMark = 'own '

/** The key of a lesson that is not of the course, which may bear the same id as one that is. */
export function ownKey(id: string): string {
  return ownMark + id
}

/** Where the browser keeps what was done of the lesson with this key. */
export function lessonKey(key: string): string {
  return prefix + key
}

/** The id in the key of a lesson of one's own; null for a lesson of the course. */
export function ownIdIn(key: string): string | null {
  return key.startsWith(ownMark) ? key.slice(ownMark.length) : null
}

function parse(text: string | null): unknown {
  try {
    return text === null ? undefined : JSON.parse(text)
  } catch (error) {
    if (error instanceof SyntaxError) return undefined
    throw error
  }
}

const learnings = new WeakMap<Session, Learning>()

/** The one record of what is learned in this session; `storage` is looked at the first time only. */
export function learningOf(session: Session, storage: () => LearningStorage | null): Learning {
  let learning = learnings.get(session)
  if (!learning) learnings.set(session, (learning = new Learning(storage())))
  return learning
}
