/**
 * What a person has chosen for themselves, kept in this browser under one key for all its tabs: the last choice made in
 * any of them holds in all. Where the browser keeps nothing, a choice lasts until the page is closed.
 */
import type { Settings } from './settings.ts'
import { usableSettings } from './settings.ts'

/** What of the browser's storage is needed. */
export type ComfortStorage = Pick<Storage, 'getItem' | 'setItem'>

export const comfortKey = 'tackstair comfort'

export class Comfort {
  readonly #storage: ComfortStorage | null
  readonly #listeners = new Set<() => void>()
  #settings: Settings = {}
  #keeps: boolean

  constructor(storage: ComfortStorage | null) {
    this.#storage = storage
    this.#keeps = storage !== null
    this.#settings = this.#stored()
  }

  get settings(): Settings {
    return this.#settings
  }

  /** Whether the browser has kept everything so far. */
  get keeps(): boolean {
    return this.#keeps
  }

  choose(part: Settings): void {
    // Another tab may have chosen something else in between.
    this.set({ ...this.#stored(), ...part })
  }

  /** All of it anew, as when a choice is taken back. */
  set(settings: Settings): void {
    this.#settings = settings
    this.#attempt((storage) => storage.setItem(comfortKey, JSON.stringify(settings)))
    this.#tell()
  }

  /** To be called when another tab has written. */
  lookAgain(): void {
    this.#settings = this.#stored()
    this.#tell()
  }

  /** Calls `listener` after every change; returns what ends that. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  #tell(): void {
    for (const listener of this.#listeners) listener()
  }

  #stored(): Settings {
    const text = this.#attempt((storage) => storage.getItem(comfortKey))
    return this.#keeps ? usableSettings(parse(text ?? '{}')) : this.#settings
  }

  /** A storage that is blocked or full throws; from then on nothing is kept, and `keeps` says so. */
  #attempt<Result>(touch: (storage: ComfortStorage) => Result): Result | null {
    if (!this.#storage || !this.#keeps) return null
    try {
      return touch(this.#storage)
    } catch (error) {
      if (!(error instanceof Error)) throw error
      this.#keeps = false
      return null
    }
  }
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (error) {
    if (error instanceof SyntaxError) return {}
    throw error
  }
}
