/** Where drafts are kept: one entry a tab in a storage of the browser, every way in which that can fail told apart. */

/**
 * saved            written and read back
 * not saved        changed since
 * storage full     there is no room for it; what was saved before is still there
 * storage blocked  the browser keeps nothing for this page, or loses what it is given
 * private          the browser takes nothing at all, as some private windows do. A private window that keeps things until
 *                  it is closed cannot be told from any other.
 */
export type DraftState = 'saved' | 'not saved' | 'storage full' | 'storage blocked' | 'private'

/** What a draft shelf needs of the browser's storage. */
export type DraftStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>

const prefix = 'tackstair draft '
const probeKey = 'tackstair probe'
const asideKey = 'tackstair unreadable draft'

export class DraftShelf {
  readonly #storage: DraftStorage

  constructor(storage: DraftStorage) {
    this.#storage = storage
  }

  /** Whether it takes anything at all: "not saved" where it does. */
  probe(): DraftState {
    const state = this.#put(probeKey, 'x')
    this.#drop(probeKey)
    // A storage that has no room for one letter beside nothing else has no room on purpose.
    return state === 'saved' ? 'not saved' : state === 'storage full' && this.ids().length === 0 ? 'private' : state
  }

  ids(): string[] {
    return this.#attempt(
      () =>
        Array.from({ length: this.#storage.length }, (_, index) => this.#storage.key(index) ?? '').flatMap((key) =>
          key.startsWith(prefix) ? [key.slice(prefix.length)] : [],
        ),
      [],
    )
  }

  read(id: string): string | null {
    return this.#attempt(() => this.#storage.getItem(prefix + id), null)
  }

  write(id: string, text: string): DraftState {
    return this.#put(prefix + id, text)
  }

  remove(id: string): void {
    this.#drop(prefix + id)
  }

  get setAside(): string | null {
    return this.#attempt(() => this.#storage.getItem(asideKey), null)
  }

  /** Keeps a text that could not be read; the last one only. */
  putAside(text: string | null): void {
    if (text === null) this.#drop(asideKey)
    else this.#put(asideKey, text)
  }

  #drop(key: string): void {
    this.#attempt(() => this.#storage.removeItem(key), undefined)
  }

  #put(key: string, text: string): DraftState {
    try {
      this.#storage.setItem(key, text)
      return 'saved'
    } catch (error) {
      return isQuota(error) ? 'storage full' : 'storage blocked'
    }
  }

  /** A blocked storage throws at every touch; then it is as good as empty. */
  #attempt<Result>(touch: () => Result, otherwise: Result): Result {
    try {
      return touch()
    } catch (error) {
      if (error instanceof Error || error instanceof DOMException) return otherwise
      throw error
    }
  }
}

/** Browsers have called it by two names. */
function isQuota(error: unknown): boolean {
  return error instanceof Error && ['QuotaExceededError', 'NS_ERROR_DOM_QUOTA_REACHED'].includes(error.name)
}
