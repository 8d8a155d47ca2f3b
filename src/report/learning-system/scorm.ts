/**
 * A SCORM system: an object with a handful of functions that answer at once. What the two standards call things is their
 * dialect (scorm-12.ts, scorm-2004.ts); here is how they are spoken with. What has been set and not yet committed is set
 * again before the next try, so that a system that forgets loses nothing; what it has confirmed is not said twice.
 */
import type { Task } from './account.ts'
import type { Dispatch, Entry, LearningSystem, Mode, Opened, Sent } from './system.ts'

export type Pair = readonly [element: string, value: string]

export interface Dialect {
  readonly apiName: string
  /** windows above this one that are looked into */
  readonly hops: number
  readonly calls: Readonly<Record<'begin' | 'end' | 'get' | 'set' | 'commit' | 'error', string>>
  readonly room: number
  /** interactions a system has to hold; more are told in place of older ones of the same question */
  readonly mostInteractions: number
  readonly opened: (get: (element: string) => string) => Opened
  /**
   * Elements that may only rise, each with the rank of a value; n stands for the place of an objective. Should the suspended work be lost or unreadable, what the
   * system knows of the learner is still true: nobody who has passed is told to have only begun.
   */
  readonly rising: Readonly<Record<string, (value: string) => number>>
  /** how far the learner has come */
  readonly standing: (dispatch: Dispatch) => Pair[]
  readonly suspended: (dispatch: Dispatch) => Pair[]
  readonly objective: (at: number, task: Task) => Pair[]
  /** null where the standard has no place for it */
  readonly interaction: (at: number, entry: Entry) => Pair[] | null
  readonly visit: (dispatch: Dispatch) => Pair[]
}

/** Codes of GetLastError at the beginning that may say the visit has begun already (1.2, 2004), or that it is over. */
const begunBefore = ['101', '103']
const endedBefore = ['104']
/** Codes at setting and committing that say the system is not listening: 1.2 not initialized; 2004 before and after a visit. */
const notListening = ['301', '132', '133', '142', '143']

/** Stands for the place of an objective in the name of an element. */
const anyPlace = '.n.'

export class Scorm implements LearningSystem {
  readonly #api: Record<string, unknown>
  readonly #dialect: Dialect
  #mode: Mode = 'normal'
  #over = false
  /** what the system has confirmed */
  readonly #confirmed = new Map<string, string>()
  /** places given to objectives, by id, and to interactions, by the number of their entry */
  readonly #objectives = new Map<string, number>()
  readonly #interactions = new Map<number, { at: number; question: string }>()
  #firstInteraction = 0
  /** ranks that the system had at the beginning, by element */
  readonly #reached = new Map<string, number>()
  readonly #refused = new Set<string>()
  /** known once the system has answered */
  readonly who = null

  constructor(api: Record<string, unknown>, dialect: Dialect) {
    this.#api = api
    this.#dialect = dialect
  }

  get room(): number {
    return this.#dialect.room
  }

  open(): Promise<Opened | 'later' | 'closed'> {
    if (this.#call('begin', '') !== 'true') {
      const code = this.#call('error')
      if (endedBefore.includes(code)) return Promise.resolve('closed')
      if (!begunBefore.includes(code) || !this.#listens()) return Promise.resolve('later')
    }
    const opened = this.#dialect.opened((element) => this.#call('get', element))
    this.#mode = opened.mode
    this.#firstInteraction = this.#count('cmi.interactions._count')
    const objectives = this.#count('cmi.objectives._count')
    for (let at = 0; at < objectives; at++) this.#objectives.set(this.#call('get', `cmi.objectives.${at}.id`), at)
    for (const [pattern, rank] of Object.entries(this.#dialect.rising)) {
      const elements = pattern.includes(anyPlace)
        ? Array.from({ length: objectives }, (_, at) => pattern.replace(anyPlace, `.${at}.`))
        : [pattern]
      for (const element of elements) this.#reached.set(element, rank(this.#call('get', element)))
    }
    // Some systems give one id to all who sit at a computer: the name keeps them apart as well.
    const { who: id, learner } = opened
    return Promise.resolve({ ...opened, who: [id, learner].filter((each) => each !== '').join(' ') })
  }

  send(dispatch: Dispatch): Promise<Sent> {
    if (this.#over) return Promise.resolve({ kind: 'closed' })
    return Promise.resolve(this.#commit(this.#said(dispatch)))
  }

  close(dispatch: Dispatch): boolean {
    if (this.#over) return false
    const { kind } = this.#commit(this.#said(dispatch))
    this.#over = true
    return this.#call('end', '') === 'true' && kind === 'taken'
  }

  #said(dispatch: Dispatch): Pair[] {
    return [...(this.#mode === 'normal' ? this.#told(dispatch) : []), ...this.#dialect.visit(dispatch)]
  }

  #told(dispatch: Dispatch): Pair[] {
    const { standing, suspended, objective } = this.#dialect
    const objectives = dispatch.account.tasks.flatMap((task) => objective(this.#placeOf(task), task))
    const interactions = dispatch.entries.flatMap((entry) => this.#interaction(entry))
    return [...standing(dispatch), ...objectives, ...interactions, ...suspended(dispatch)]
  }

  #commit(pairs: readonly Pair[]): Sent {
    const news = pairs.filter(
      ([element, value]) =>
        this.#confirmed.get(element) !== value && !this.#refused.has(element) && !this.#falls(element, value),
    )
    const taken = news.filter(([element, value]) => this.#set(element, value))
    if (this.#over) return { kind: 'closed' }
    if (taken.length > 0 && this.#call('commit', '') !== 'true') {
      if (notListening.includes(this.#call('error'))) this.#over = true
      return this.#over ? { kind: 'closed' } : { kind: 'later' }
    }
    for (const [element, value] of taken) {
      this.#confirmed.set(element, value)
      // A lesson may be begun again within the visit; that it was passed stays true.
      const rank = this.#rankOf(element)
      if (rank && element !== patternOf(element)) this.#reached.set(element, rank(value))
    }
    return { kind: 'taken', refused: [...this.#refused] }
  }

  #falls(element: string, value: string): boolean {
    const rank = this.#rankOf(element)
    return rank !== null && rank(value) < (this.#reached.get(element) ?? -Infinity)
  }

  #rankOf(element: string): ((value: string) => number) | null {
    const { rising } = this.#dialect
    const pattern = patternOf(element)
    return Object.hasOwn(rising, pattern) ? rising[pattern] : null
  }

  /** Some parts are optional in SCORM 1.2, and a system that has none of them says so each time: it is asked once. */
  #set(element: string, value: string): boolean {
    if (this.#call('set', element, value) === 'true') return true
    const code = this.#call('error')
    if (notListening.includes(code)) this.#over = true
    else this.#refused.add(element)
    return false
  }

  #placeOf({ id }: Task): number {
    const at = this.#objectives.get(id) ?? this.#objectives.size
    this.#objectives.set(id, at)
    return at
  }

  #interaction(entry: Entry): Pair[] {
    if (entry.what.kind !== 'answered') return []
    const question = entry.what.answered.id
    const { mostInteractions, interaction } = this.#dialect
    const next = this.#firstInteraction + new Set([...this.#interactions.values()].map(({ at }) => at)).size
    const older = [...this.#interactions.values()].find((each) => each.question === question)
    const at = this.#interactions.get(entry.number)?.at ?? (next < mostInteractions ? next : older?.at)
    if (at === undefined) {
      this.#refused.add(question)
      return []
    }
    const pairs = interaction(at, entry)
    if (pairs) this.#interactions.set(entry.number, { at, question })
    return pairs ?? []
  }

  #listens(): boolean {
    this.#call('get', 'cmi.suspend_data')
    return this.#call('error') === '0'
  }

  #count(element: string): number {
    const count = Number(this.#call('get', element))
    return Number.isInteger(count) && count >= 0 ? count : 0
  }

  /** What the system answers, as a text; a system that throws has answered nothing. */
  #call(name: keyof Dialect['calls'], ...values: string[]): string {
    const call = this.#api[this.#dialect.calls[name]]
    if (typeof call !== 'function') return ''
    try {
      return String(Reflect.apply(call, this.#api, values))
    } catch (error) {
      if (error instanceof Error) return ''
      throw error
    }
  }
}

/** The element as it stands among those that may only rise. */
function patternOf(element: string): string {
  return element.replace(/\.\d+\./, anyPlace)
}

/** The rank of a word in a list from least to most; a word that is not in it ranks below all. */
export function rankIn(...words: readonly string[]): (value: string) => number {
  return (value) => words.indexOf(value)
}

/** Numbers rank by themselves; what is no number ranks below all. */
export function rankOfNumber(value: string): number {
  return value === '' || Number.isNaN(Number(value)) ? -Infinity : Number(value)
}
