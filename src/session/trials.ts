/** The trials of a session: set-ups that were tried, each with what was expected of it and a note. Plain data. */
import { Results } from './results.ts'
import type { Trial } from './saved.ts'
import type { Session } from './session.ts'
import { takesLong } from './printing.ts'

/** More than anybody compares; a file holds a thousand. */
export const mostTrials = 1000

export class Trials {
  #list: readonly Trial[] = []
  /** results, for as long as their set-up is known */
  readonly #results = new WeakMap<Trial['setUp'], Results>()
  readonly #listeners = new Set<() => void>()

  get list(): readonly Trial[] {
    return this.#list
  }

  /** Takes over a whole list, such as a file's. */
  take(list: readonly Trial[]): void {
    this.#list = list.slice(0, mostTrials)
    this.#tell()
  }

  /** Pins what the bench shows now, last in the list. */
  pin(session: Session, said: Pick<Trial, 'name' | 'note'> & { prediction: string }): void {
    const { setUp, results } = session
    this.#results.set(setUp, results)
    this.take([...this.#list, { ...said, setUp, readings: [] }])
  }

  edit(index: number, part: Partial<Pick<Trial, 'name' | 'note'>> & { prediction?: string }): void {
    this.take(this.#list.map((trial, at) => (at === index ? { ...trial, ...part } : trial)))
  }

  remove(index: number): void {
    this.take(this.#list.filter((_, at) => at !== index))
  }

  /** What a trial printed; null for a sheet so far into a run that it must be printed on the bench first. */
  results({ setUp }: Trial): Results | null {
    let results = this.#results.get(setUp)
    if (!results && !takesLong(setUp)) this.#results.set(setUp, (results = Results.of(setUp)))
    return results ?? null
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  #tell(): void {
    for (const listener of this.#listeners) listener()
  }
}

const trials = new WeakMap<Session, Trials>()

/** The one list of trials of this session. */
export function trialsOf(session: Session): Trials {
  let own = trials.get(session)
  if (!own) trials.set(session, (own = new Trials()))
  return own
}
