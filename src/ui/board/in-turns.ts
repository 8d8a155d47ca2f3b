/**
 * Counts that take long with a large class: no more than one is made in a drawing, and another drawing is asked for until
 * all are. Until its turn comes, what a section showed before stands, or nothing.
 */
export class InTurns {
  readonly #drawAgain: () => void
  #hasCounted = false
  #isAsked = false

  /** `drawAgain` is called in a turn of the page of its own. */
  constructor(drawAgain: () => void) {
    this.#drawAgain = drawAgain
  }

  /** At the beginning of every drawing. */
  begin(): void {
    this.#hasCounted = false
  }

  section<Counted>(): Section<Counted> {
    return new Section(() => this.#mayCount())
  }

  #mayCount(): boolean {
    if (!this.#hasCounted) return (this.#hasCounted = true)
    if (this.#isAsked) return false
    this.#isAsked = true
    setTimeout(() => {
      this.#isAsked = false
      this.#drawAgain()
    })
    return false
  }
}

export class Section<Counted> {
  readonly #mayCount: () => boolean
  #kept: { readonly of: readonly unknown[]; readonly counted: Counted } | null = null

  constructor(mayCount: () => boolean) {
    this.#mayCount = mayCount
  }

  /** `of`: all that the count depends on. */
  show(of: readonly unknown[], count: () => Counted): Counted | null {
    const kept = this.#kept
    if (kept?.of.every((each, at) => each === of[at])) return kept.counted
    if (!this.#mayCount()) return kept?.counted ?? null
    this.#kept = { of, counted: count() }
    return this.#kept.counted
  }

  clear(): void {
    this.#kept = null
  }
}
