/** Counts the time that somebody is at work: only while the page is visible, and never long gaps in which nothing is done. */

/** ms: a longer gap between two moves counts as this much. Chosen: longer than the longest step takes to read. */
const longestGap = 10 * 60_000

export class ActiveTime {
  readonly #now: () => number
  /** when counting was last brought up to date; null while it rests */
  #since: number | null = null
  #counted = 0

  /** `now` in ms. */
  constructor(now: () => number) {
    this.#now = now
  }

  /** The page is seen, and somebody is at work. */
  resume(): void {
    this.move()
    this.#since = this.#now()
  }

  /** The page is hidden or left. */
  pause(): void {
    this.move()
    this.#since = null
  }

  /** Something has been done. A clock that was set back counts nothing. */
  move(): void {
    if (this.#since === null) return
    const now = this.#now()
    this.#counted += Math.min(longestGap, Math.max(0, now - this.#since))
    this.#since = now
  }

  /** s counted since the last taking. */
  take(): number {
    this.move()
    const seconds = this.#counted / 1000
    this.#counted = 0
    return seconds
  }
}
