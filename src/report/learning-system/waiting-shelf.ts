/**
 * What a learning system has not confirmed yet, kept in the browser: one entry for each learner and parcel. It is written
 * before anything is sent and goes once all of it has arrived, so that nothing stays on a computer that others use.
 */
import * as v from 'valibot'
import type { ShelfStorage } from './shelf-storage.ts'
import { jsonIn, shortOf, touched } from './shelf-storage.ts'
import type { Entry } from './system.ts'

export const waitingSchema = v.object({
  /** names the attempt (suspended.ts) */
  attempt: v.string(),
  /** whether the system has confirmed anything of this attempt */
  confirmed: v.boolean(),
  /** all of the learner's work, as suspended.ts writes it */
  text: v.string(),
  entries: v.array(v.custom<Entry>(isEntry)),
})
export type Waiting = Readonly<v.InferOutput<typeof waitingSchema>>

export class WaitingShelf {
  readonly #storage: ShelfStorage | null
  readonly #key: string
  #keeps: boolean

  constructor(storage: ShelfStorage | null, who: string) {
    this.#storage = storage
    this.#key = `tackstair visit ${shortOf(who)}`
    this.#keeps = storage !== null
  }

  /** Whether the browser has what was put here last. */
  get keeps(): boolean {
    return this.#keeps
  }

  get(): Waiting | null {
    const read = touched(this.#storage, (storage) => storage.getItem(this.#key))
    if (!read) this.#keeps = false
    const parsed = v.safeParse(waitingSchema, jsonIn(read ? read[0] : null))
    return parsed.success ? parsed.output : null
  }

  put(waiting: Waiting): void {
    // A storage that was full may have room again.
    this.#keeps = touched(this.#storage, (storage) => storage.setItem(this.#key, JSON.stringify(waiting))) !== null
  }

  clear(): void {
    touched(this.#storage, (storage) => storage.removeItem(this.#key))
  }
}

function isEntry(given: unknown): boolean {
  const entry = given as Partial<Entry> | null
  return typeof entry === 'object' && typeof entry?.number === 'number' && typeof entry.id === 'string'
}
