/** Something that is made in steps, as far as there is time for them, and kept once it is made. */
export class InSteps<Result extends object> {
  readonly #steps: Generator<undefined, Result>
  #made: Result | undefined

  constructor(steps: Generator<undefined, Result>) {
    this.#steps = steps
  }

  /** Takes steps, one at least, while it may go on; the result, or undefined where there is more to do. */
  makeWhile(mayGoOn: () => boolean): Result | undefined {
    while (!this.#made) {
      const step = this.#steps.next()
      if (step.done === true) return (this.#made = step.value)
      if (!mayGoOn()) return undefined
    }
    return this.#made
  }

  /** The result, with all steps that are left. */
  make(): Result {
    return (this.#made ??= allAtOnce(this.#steps))
  }
}

/** The result of all steps, where nobody waits between them. */
export function allAtOnce<Result>(steps: Generator<undefined, Result>): Result {
  for (;;) {
    const step = steps.next()
    if (step.done === true) return step.value
  }
}
