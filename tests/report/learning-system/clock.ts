/** A clock that stands still until it is told to go on, and lets everything that was promised happen meanwhile. */
export class Clock {
  now = Date.UTC(2026, 2, 2, 8, 30)
  #timers: { at: number; call: () => void }[] = []
  #ids = 0

  readonly later = (call: () => void, ms: number): (() => void) => {
    const timer = { at: this.now + ms, call }
    this.#timers.push(timer)
    return () => void (this.#timers = this.#timers.filter((other) => other !== timer))
  }

  /** A UUID unlike any other. */
  readonly newId = (): string => {
    const number = (++this.#ids).toString(16).padStart(12, '0')
    return `00000000-0000-4000-8000-${number}`
  }

  async wait(ms: number): Promise<void> {
    const end = this.now + ms
    await settled()
    for (;;) {
      const next = this.#timers.filter(({ at }) => at <= end).sort((one, other) => one.at - other.at)[0] as
        { at: number; call: () => void } | undefined
      if (!next) break
      this.now = Math.max(this.now, next.at)
      this.#timers = this.#timers.filter((other) => other !== next)
      next.call()
      await settled()
    }
    this.now = end
  }
}

/** Every promise that waits for nothing but others has been kept by then. */
async function settled(): Promise<void> {
  for (let turn = 0; turn < 3; turn++) await new Promise((resolve) => setImmediate(resolve))
}
