/** This learner's earlier attempts that the system no longer knows: what was done in them, and what is done with them. */
import type { Aside, AsideShelf } from './aside-shelf.ts'
import type { Known } from './attempt.ts'
import { resumeFrom } from './suspended.ts'
import type { Waiting } from './waiting-shelf.ts'
import type { Work } from './work.ts'

export class AsideAttempts {
  readonly #shelf: AsideShelf
  readonly #lesson: Known['lesson']
  readonly #changed: () => void

  /** Calls `changed` after what their learner has done with one. */
  constructor(shelf: AsideShelf, lesson: Known['lesson'], changed: () => void) {
    this.#shelf = shelf
    this.#lesson = lesson
    this.#changed = changed
  }

  /** The oldest first. */
  get list(): readonly Aside[] {
    return this.#shelf.list
  }

  /** Those that there is no more room for. */
  get crowdedOut(): readonly Aside[] {
    return this.#shelf.crowdedOut
  }

  /** Whether the browser has them. */
  get keeps(): boolean {
    return this.#shelf.keeps
  }

  /** What was done in one of them; null where it can no longer be read. */
  workIn({ text }: Aside): Work | null {
    return resumeFrom(text, this.#lesson)?.work ?? null
  }

  /** Only what has answers that never arrived is worth it. `since` in ms since 1970. */
  take(waiting: Waiting, since: number): void {
    if (waiting.entries.length > 0) this.#shelf.add({ ...waiting, since })
  }

  remove(aside: Aside): void {
    this.#shelf.remove(aside)
    this.#changed()
  }

  putBack(aside: Aside): void {
    this.#shelf.add(aside)
    this.#changed()
  }
}
