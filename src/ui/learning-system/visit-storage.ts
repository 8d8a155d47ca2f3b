/**
 * What is learned during a visit from a learning system, for as long as the page is open: many learners may use one
 * computer, and the system keeps what each of them has done. Everything else stays where it always is.
 */
const learned = /^tackstair (lesson |learner|group|open lesson|drills)/

export class VisitStorage implements Storage {
  readonly #rest: Storage | null
  readonly #entries = new Map<string, string>()
  /** called after every change of what is learned */
  changed: () => void = () => undefined

  constructor(rest: Storage | null) {
    this.#rest = rest
  }

  get length(): number {
    return this.#keys().length
  }

  key(at: number): string | null {
    return this.#keys().at(at) ?? null
  }

  getItem(key: string): string | null {
    return learned.test(key) ? (this.#entries.get(key) ?? null) : (this.#rest?.getItem(key) ?? null)
  }

  setItem(key: string, text: string): void {
    if (!learned.test(key)) {
      this.#rest?.setItem(key, text)
      return
    }
    if (this.#entries.get(key) === text) return
    this.#entries.set(key, text)
    this.changed()
  }

  removeItem(key: string): void {
    if (!learned.test(key)) this.#rest?.removeItem(key)
    else if (this.#entries.delete(key)) this.changed()
  }

  clear(): void {
    this.#entries.clear()
    this.changed()
  }

  #keys(): string[] {
    const rest = this.#rest
    const others = rest ? Array.from({ length: rest.length }, (_, at) => rest.key(at) ?? '') : []
    return [...this.#entries.keys(), ...others.filter((key) => !learned.test(key))]
  }
}
