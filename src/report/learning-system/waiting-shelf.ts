/**
 * What a learning system has not confirmed yet, kept in the browser: one entry for each learner and parcel. It is written
 * before anything is sent and goes once all of it has arrived, so that nothing stays on a computer that others use.
 */
import * as v from 'valibot'
import type { Entry } from './system.ts'

const shelfSchema = v.object({
  /** names the attempt (suspended.ts) */
  attempt: v.string(),
  /** whether the system has confirmed anything of this attempt */
  confirmed: v.boolean(),
  /** all of the learner's work, as suspended.ts writes it */
  text: v.string(),
  entries: v.array(v.custom<Entry>(isEntry)),
})
export type Waiting = Readonly<v.InferOutput<typeof shelfSchema>>

export type ShelfStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>

export class WaitingShelf {
  readonly #storage: ShelfStorage | null
  readonly #key: string
  #keeps: boolean

  constructor(storage: ShelfStorage | null, who: string) {
    this.#storage = storage
    this.#key = `tackstair visit ${shortOf(who)}`
    this.#keeps = storage !== null
  }

  /** Whether the browser has taken everything so far. */
  get keeps(): boolean {
    return this.#keeps
  }

  get(): Waiting | null {
    const text = this.#touch((storage) => storage.getItem(this.#key))
    try {
      const parsed = v.safeParse(shelfSchema, JSON.parse(text ?? 'null'))
      return parsed.success ? parsed.output : null
    } catch (error) {
      if (error instanceof SyntaxError) return null
      throw error
    }
  }

  put(waiting: Waiting): void {
    this.#touch((storage) => {
      storage.setItem(this.#key, JSON.stringify(waiting))
      return null
    })
  }

  /** An attempt that the system no longer knows keeps what it had, out of the way of the new one. */
  setAside(waiting: Waiting): void {
    this.#touch((storage) => {
      storage.setItem(`${this.#key} aside`, JSON.stringify(waiting))
      return null
    })
  }

  clear(): void {
    this.#touch((storage) => {
      storage.removeItem(this.#key)
      return null
    })
  }

  /** A storage that is blocked or full throws. */
  #touch<Result>(touch: (storage: ShelfStorage) => Result): Result | null {
    if (!this.#storage) return null
    try {
      return touch(this.#storage)
    } catch (error) {
      if (!(error instanceof DOMException)) throw error
      this.#keeps = false
      return null
    }
  }
}

function isEntry(given: unknown): boolean {
  const entry = given as Partial<Entry> | null
  return typeof entry === 'object' && typeof entry?.number === 'number' && typeof entry.id === 'string'
}

/** 32 bits (FNV-1a, Fowler, Noll and Vo) twice over, so that no name stands in the storage in plain letters. */
function shortOf(text: string): string {
  return [0x811c9dc5, 0x9747b28c]
    .map((start) => {
      let hash = start
      for (const sign of text) hash = Math.imul(hash ^ (sign.codePointAt(0) ?? 0), 0x01000193)
      return (hash >>> 0).toString(36)
    })
    .join('')
}
