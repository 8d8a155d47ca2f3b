/**
 * Attempts that their learning system no longer knows, with answers it never received: out of the way of the new attempt,
 * and kept for their learner until they are saved or removed. Others use the same computer, so there is an end to it.
 */
import * as v from 'valibot'
import type { ShelfStorage } from './shelf-storage.ts'
import { jsonIn, shortOf, touched } from './shelf-storage.ts'
import type { Waiting } from './waiting-shelf.ts'
import { waitingSchema } from './waiting-shelf.ts'

/** Attempts of one learner and parcel; chosen, more than a course allows as a rule. */
export const mostAside = 5
/** Chosen so that whoever comes once a month meets them again. */
export const daysAside = 40
const day = 24 * 60 * 60 * 1000

const prefix = 'tackstair aside '
const listSchema = v.array(v.object({ ...waitingSchema.entries, since: v.number() }))

export interface Aside extends Waiting {
  /** ms since 1970: when it was set aside */
  readonly since: number
}

export class AsideShelf {
  readonly #storage: ShelfStorage | null
  readonly #key: string
  #list: readonly Aside[]
  #keeps = true

  /** `now` in ms since 1970. Whatever is too old goes, whoever left it. */
  constructor(storage: ShelfStorage | null, who: string, now: number) {
    this.#storage = storage
    this.#key = prefix + shortOf(who)
    const oldest = now - daysAside * day
    touched(storage, (given) => {
      for (const key of keysOf(given))
        if (!readList(given, key).some(({ since }) => since > oldest)) given.removeItem(key)
    })
    const read = touched(storage, (given) => readList(given, this.#key))
    this.#list = (read?.[0] ?? []).filter(({ since }) => since > oldest)
  }

  /** The oldest first; those beyond the last `mostAside` are gone once the page is closed. */
  get list(): readonly Aside[] {
    return this.#list
  }

  /** Those that there is no more room for. */
  get crowdedOut(): readonly Aside[] {
    return this.#list.slice(0, -mostAside)
  }

  /** Whether the browser has the list. */
  get keeps(): boolean {
    return this.#keeps
  }

  /** An attempt set aside again takes the place of what was kept of it. */
  add(aside: Aside): void {
    const others = this.#list.filter(({ attempt }) => attempt !== aside.attempt)
    this.#write([...others, aside].sort((one, other) => one.since - other.since))
  }

  remove({ attempt }: Aside): void {
    this.#write(this.#list.filter((each) => each.attempt !== attempt))
  }

  #write(list: readonly Aside[]): void {
    this.#list = list
    const done = touched(this.#storage, (storage) => {
      if (list.length === 0) storage.removeItem(this.#key)
      else storage.setItem(this.#key, JSON.stringify(list.slice(-mostAside)))
    })
    this.#keeps = done !== null || list.length === 0
  }
}

function keysOf(storage: ShelfStorage): string[] {
  const keys = Array.from({ length: storage.length }, (_, at) => storage.key(at) ?? '')
  return keys.filter((key) => key.startsWith(prefix))
}

function readList(storage: ShelfStorage, key: string): Aside[] {
  const parsed = v.safeParse(listSchema, jsonIn(storage.getItem(key)))
  return parsed.success ? parsed.output : []
}
