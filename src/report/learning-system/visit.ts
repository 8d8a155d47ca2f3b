/**
 * One visit of a learner from a learning system: takes up what was kept, follows the work, and tells the system of it.
 *
 * Nothing is lost: whatever the system has not confirmed waits in the browser, is told again with growing pauses, and at
 * the next visit if need be. Nothing is told twice: every entry of the journal has a number and an id from the moment it
 * happens, and the text that the system hands back says up to which number it has been told.
 */
import type { Account } from './account.ts'
import { AsideAttempts } from './aside-attempts.ts'
import { AsideShelf } from './aside-shelf.ts'
import type { Known } from './attempt.ts'
import { Attempt } from './attempt.ts'
import type { Detail } from './suspended.ts'
import type { Dispatch, LearningSystem, Opened, Sent } from './system.ts'
import type { ShelfStorage } from './shelf-storage.ts'
import { WaitingShelf } from './waiting-shelf.ts'
import type { Work } from './work.ts'

export interface VisitPorts {
  /** ms since 1970 */
  readonly now: () => number
  /** calls after so many ms; returns what takes that back */
  readonly later: (call: () => void, ms: number) => () => void
  /** a new UUID */
  readonly newId: () => string
  /** null where the browser keeps nothing */
  readonly storage: ShelfStorage | null
}

export interface VisitState {
  /** looking round: nothing of it counts */
  readonly kind: 'opening' | 'saved' | 'saving' | 'waiting' | 'closed' | 'looking round'
  /** ms since 1970: when it was last confirmed, null before; when it is tried again */
  readonly savedAt: number | null
  readonly nextAt: number | null
  /** what the system has no room for */
  readonly leftOut: Detail | null
  /** parts it does not take */
  readonly refused: readonly string[]
}

/** ms from a change to its telling: an answer soon, a bench that is being played with when it rests. */
const delays = { answer: 500, other: 10_000 }
/** ms to the first new try and between later ones at most; each pause is twice the one before. */
const firstPause = 2000
const longestPause = 60_000

export class Visit {
  readonly #system: LearningSystem
  readonly #known: Known
  readonly #ports: VisitPorts
  readonly #begun: number
  readonly #listeners = new Set<() => void>()
  readonly #attempt: Attempt
  #opened: Opened | null = null
  #shelf: WaitingShelf | null = null
  #aside: AsideAttempts | null = null
  #state: VisitState = { kind: 'opening', savedAt: null, nextAt: null, leftOut: null, refused: [] }
  /** a change that has not been sent */
  #dirty = false
  #busy = false
  #tries = 0
  #cancel: (() => void) | null = null
  #left = false

  constructor(system: LearningSystem, known: Known, ports: VisitPorts) {
    this.#system = system
    this.#known = known
    this.#ports = ports
    this.#begun = ports.now()
    this.#attempt = new Attempt(known, ports)
  }

  get state(): VisitState {
    return this.#state
  }

  /** null until the system has answered */
  get opened(): Opened | null {
    return this.#opened
  }

  get work(): Work {
    return this.#attempt.work
  }

  get account(): Account {
    return this.#attempt.account
  }

  /** Whether the browser keeps what waits, and what was set aside. */
  get keeps(): boolean {
    return (this.#shelf?.keeps ?? this.#ports.storage !== null) && this.#aside?.keeps !== false
  }

  /** Whether closing the page now would lose work: the system does not have it, and the browser does not take it. */
  get wouldLose(): boolean {
    if (this.keeps || this.#state.kind === 'looking round') return false
    const isAnswering = this.#state.kind === 'saved' || this.#state.kind === 'saving'
    const isAsideHere = this.#aside?.keeps === false
    // A bench that was played with is told as the page goes, where the system listens at all.
    return isAsideHere || this.#attempt.entries.length > 0 || (this.#dirty && !isAnswering)
  }

  /** This learner's earlier attempts that the system no longer knows; null until that is known. */
  get aside(): AsideAttempts | null {
    return this.#aside
  }

  /** How many entries the system has not confirmed. */
  get waiting(): number {
    return this.#attempt.entries.length
  }

  /** Calls `listener` after every change of the state; returns what ends that. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** Asks the system in; where it does not answer, asks again later, and the work goes on here meanwhile. */
  async open(): Promise<void> {
    const { who } = this.#system
    if (who !== null) this.#takeUpHere(who)
    await this.#ask()
  }

  /** The work as it stands now. */
  note(work: Work): void {
    if (this.#state.kind === 'looking round') return
    const isNews = this.#attempt.note(work)
    this.#dirty = true
    this.#keep()
    if (this.#opened && !this.#busy && !this.#left && this.#tries === 0)
      this.#schedule(isNews ? delays.answer : delays.other)
  }

  /** Tells the system now, as when the page is hidden or somebody asks for it. */
  async flush(): Promise<void> {
    this.#cancel?.()
    this.#cancel = null
    if (!this.#opened) await this.#ask()
    else await this.#send()
  }

  /** The page is being closed: what is left to say is said without waiting. Nothing is told after it. */
  leave(): void {
    if (this.#left) return
    this.#left = true
    this.#cancel?.()
    if (!this.#opened || this.#state.kind === 'closed') return
    const isKnownToBeThere = this.#system.close(this.#dispatch())
    if (isKnownToBeThere) {
      this.#shelf?.clear()
      this.#attempt.forgetEntries()
      this.#dirty = false
    }
    this.#become({ kind: 'closed', nextAt: null })
  }

  async #ask(): Promise<void> {
    if (this.#busy || this.#left) return
    this.#busy = true
    const answer = await this.#system.open()
    this.#busy = false
    if (answer === 'closed') this.#become({ kind: 'closed', nextAt: null })
    else if (answer === 'later') this.#again(undefined)
    else {
      this.#tries = 0
      this.#takeUp(answer)
      await this.#send()
    }
  }

  /** What waits here, before the system has answered. */
  #takeUpHere(who: string): void {
    this.#shelf = this.#openShelves(who)
    const here = this.#shelf.get()
    if (here) this.#attempt.continue(here)
  }

  /** Nothing is left in the browser for a learner whom the system does not name: the next one would be taken for them. */
  #openShelves(who: string): WaitingShelf {
    const storage = who === '' ? null : this.#ports.storage
    const whose = `${who} ${JSON.stringify(this.#known.parcel)}`
    const shelf = new AsideShelf(storage, whose, this.#ports.now())
    this.#aside = new AsideAttempts(shelf, this.#known.lesson, () => this.#become({}))
    return new WaitingShelf(storage, whose)
  }

  #takeUp(opened: Opened): void {
    this.#opened = opened
    const { work, entries } = this.#attempt
    const since = this.#shelf === null ? { work, entries } : null
    this.#shelf ??= this.#openShelves(opened.who)
    const gone = this.#attempt.takeUp(opened, this.#shelf.get(), since)
    if (gone) this.#aside?.take(gone, this.#ports.now())
    if (opened.mode === 'normal') {
      this.#dirty = true
      this.#keep()
    } else this.#become({ kind: 'looking round', nextAt: null })
  }

  #keep(): void {
    const before = this.keeps
    this.#shelf?.put(this.#attempt.kept())
    // Whoever shows where the work is kept has to know that this has changed.
    if (this.keeps !== before) this.#become({})
  }

  #dispatch(): Dispatch {
    const { leftOut, ...told } = this.#attempt.told(this.#system.room)
    if (leftOut !== this.#state.leftOut) this.#become({ leftOut })
    const now = this.#ports.now()
    return { ...told, seconds: Math.max(0, (now - this.#begun) / 1000), now }
  }

  async #send(): Promise<void> {
    if (this.#busy || this.#left || this.#state.kind === 'closed') return
    this.#busy = true
    this.#dirty = false
    const dispatch = this.#dispatch()
    if (this.#state.kind !== 'looking round') this.#become({ kind: 'saving', nextAt: null })
    const sent = await this.#system.send(dispatch)
    this.#busy = false
    this.#answered(sent, dispatch)
  }

  #answered(sent: Sent, { entries }: Dispatch): void {
    if (this.#left) return
    if (sent.kind === 'closed') {
      this.#dirty = true
      this.#become({ kind: 'closed', nextAt: null })
    } else if (sent.kind === 'later') {
      this.#dirty = true
      this.#again(sent.wait)
    } else if (sent.kind === 'overtaken') {
      this.#dirty = true
      this.#attempt.overtaken(sent.suspended)
      this.#again(undefined)
    } else {
      this.#tries = 0
      this.#attempt.confirm(entries)
      if (this.#state.kind === 'looking round') return
      this.#keep()
      this.#become({ kind: 'saved', savedAt: this.#ports.now(), nextAt: null, refused: sent.refused })
      if (this.#dirty) this.#schedule(this.#attempt.entries.length > 0 ? delays.answer : delays.other)
    }
  }

  #again(wait: number | undefined): void {
    const pause = Math.max(wait ?? 0, Math.min(longestPause, firstPause * 2 ** this.#tries))
    this.#tries++
    this.#schedule(pause)
    if (this.#state.kind !== 'looking round') {
      this.#become({ kind: 'waiting', nextAt: this.#ports.now() + pause })
    }
  }

  #schedule(ms: number): void {
    this.#cancel?.()
    this.#cancel = this.#ports.later(() => void this.flush(), ms)
  }

  #become(part: Partial<VisitState>): void {
    this.#state = { ...this.#state, ...part }
    for (const listener of this.#listeners) listener()
  }
}
