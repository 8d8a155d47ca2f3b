/** A browser as far as drafts know it, with tabs that come and go. */
import { Draft } from '../../src/session/draft.ts'
import type { DraftState, DraftStorage } from '../../src/session/draft-shelf.ts'
import { DraftShelf } from '../../src/session/draft-shelf.ts'

/** A browser's storage that can be made small, blocked or forgetful. */
class FakeStorage implements DraftStorage {
  readonly entries = new Map<string, string>()
  room = 1_000_000
  blocked = false
  forgetful = false

  get length(): number {
    return this.#checked(() => this.entries.size)
  }
  key(index: number): string | null {
    return this.#checked(() => [...this.entries.keys()].at(index) ?? null)
  }
  getItem(key: string): string | null {
    return this.#checked(() => this.entries.get(key) ?? null)
  }
  removeItem(key: string): void {
    this.#checked(() => this.entries.delete(key))
  }
  setItem(key: string, value: string): void {
    this.#checked(() => undefined)
    const others = [...this.entries].filter(([other]) => other !== key)
    const size = others.reduce((sum, [name, text]) => sum + name.length + text.length, key.length + value.length)
    if (size > this.room) throw new DOMException('There is no room.', 'QuotaExceededError')
    if (!this.forgetful) this.entries.set(key, value)
  }
  #checked<Result>(touch: () => Result): Result {
    if (this.blocked) throw new DOMException('The page may not keep anything.', 'SecurityError')
    return touch()
  }
}

/** A browser with its storage, its clock and its tabs. */
export class FakeBrowser {
  readonly storage = new FakeStorage()
  readonly held = new Set<string>()
  hasLocks = true
  hasStorage = true
  now = 1_000_000
  #ids = 0
  #timers: { at: number; call: () => void }[] = []

  tab(remembered: { id: string | null } = { id: null }) {
    const own = new Set<string>()
    const states: DraftState[] = []
    const draft = new Draft(
      {
        shelf: this.hasStorage ? new DraftShelf(this.storage) : null,
        newId: () => `tab${++this.#ids}`,
        lastId: remembered.id,
        rememberId: (id) => (remembered.id = id),
        canHold: this.hasLocks,
        hold: (id) => {
          const isFree = !this.hasLocks || !this.held.has(id)
          if (isFree && this.hasLocks) {
            this.held.add(id)
            own.add(id)
          }
          return Promise.resolve(isFree)
        },
        isHeld: (id) => Promise.resolve(this.held.has(id)),
        now: () => this.now,
        later: (call, ms) => {
          const timer = { at: this.now + ms, call }
          this.#timers.push(timer)
          return () => (this.#timers = this.#timers.filter((other) => other !== timer))
        },
      },
      (state) => states.push(state),
    )
    const close = () => {
      draft.flush()
      for (const id of own) this.held.delete(id)
    }
    return { draft, states, remembered, close }
  }

  wait(ms: number): void {
    this.now += ms
    const due = this.#timers.filter(({ at }) => at <= this.now)
    this.#timers = this.#timers.filter(({ at }) => at > this.now)
    for (const { call } of due) call()
  }
}
