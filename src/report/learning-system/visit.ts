/**
 * One visit of a learner from a learning system: takes up what was kept, follows the work, and tells the system of it.
 *
 * Nothing is lost: whatever the system has not confirmed waits in the browser, is told again with growing pauses, and at
 * the next visit if need be. Nothing is told twice: every entry of the journal has a number and an id from the moment it
 * happens, and the text that the system hands back says up to which number it has been told.
 */
import type { Account } from './account.ts'
import { accountOf } from './account.ts'
import type { Aside } from './aside-shelf.ts'
import { AsideShelf } from './aside-shelf.ts'
import { happenedBetween } from './journal.ts'
import type { Parcel } from './launch.ts'
import type { Detail, Marks } from './suspended.ts'
import { resumeFrom, suspend } from './suspended.ts'
import type { Dispatch, Entry, LearningSystem, Opened, Sent } from './system.ts'
import type { ShelfStorage } from './shelf-storage.ts'
import type { Waiting } from './waiting-shelf.ts'
import { WaitingShelf } from './waiting-shelf.ts'
import type { Work } from './work.ts'
import { mergeWork, noWork } from './work.ts'
import type { Lesson } from '../../lesson/lesson.ts'

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

/** The course as far as a visit needs it. */
export interface Known {
  readonly parcel: Parcel
  readonly lesson: (id: string) => Lesson | null
  readonly titleOfDrill: (number: number) => string
  readonly asksOfDrill: string
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
/** s: a longer time between two answers says nothing of the answer. */
const longestTook = 600

export class Visit {
  readonly #system: LearningSystem
  readonly #known: Known
  readonly #ports: VisitPorts
  readonly #begun: number
  readonly #listeners = new Set<() => void>()
  #opened: Opened | null = null
  #shelf: WaitingShelf | null = null
  #aside: AsideShelf | null = null
  #work: Work = noWork
  #account: Account
  #entries: Entry[] = []
  #marks: Marks
  #confirmed = false
  #state: VisitState = { kind: 'opening', savedAt: null, nextAt: null, leftOut: null, refused: [] }
  /** a change that has not been sent */
  #dirty = false
  #busy = false
  #tries = 0
  #lastAnswer: number
  #cancel: (() => void) | null = null
  #left = false

  constructor(system: LearningSystem, known: Known, ports: VisitPorts) {
    this.#system = system
    this.#known = known
    this.#ports = ports
    this.#begun = ports.now()
    this.#lastAnswer = this.#begun
    this.#marks = this.#newMarks()
    this.#account = this.#accountOf(noWork)
  }

  get state(): VisitState {
    return this.#state
  }

  /** null until the system has answered */
  get opened(): Opened | null {
    return this.#opened
  }

  get work(): Work {
    return this.#work
  }

  get account(): Account {
    return this.#account
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
    return isAsideHere || this.#entries.length > 0 || (this.#dirty && !isAnswering)
  }

  /** This learner's earlier attempts that the system no longer knows, the oldest first; null until that is known. */
  get aside(): AsideShelf | null {
    return this.#aside
  }

  /** What was done in one of them; null where it can no longer be read. */
  workAside({ text }: Aside): Work | null {
    return resumeFrom(text, this.#known.lesson)?.work ?? null
  }

  removeAside(aside: Aside): void {
    this.#aside?.remove(aside)
    this.#become({})
  }

  putBackAside(aside: Aside): void {
    this.#aside?.add(aside)
    this.#become({})
  }

  /** How many entries the system has not confirmed. */
  get waiting(): number {
    return this.#entries.length
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
    const account = this.#accountOf(work)
    const before = { work: this.#work, account: this.#account }
    const news = happenedBetween(before, { work, account }, (id) => this.#lesson(id), this.#known.asksOfDrill)
    for (const { at, what } of news) this.#enter(at ?? this.#ports.now(), what)
    this.#work = work
    this.#account = account
    this.#marks = { ...this.#marks, revision: this.#marks.revision + 1, once: this.#onceBy(account) }
    this.#dirty = true
    this.#keep()
    if (this.#opened && !this.#busy && !this.#left && this.#tries === 0)
      this.#schedule(news.length > 0 ? delays.answer : delays.other)
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
      this.#entries = []
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
    if (here) this.#continue(here)
  }

  /** Nothing is left in the browser for a learner whom the system does not name: the next one would be taken for them. */
  #openShelves(who: string): WaitingShelf {
    const storage = who === '' ? null : this.#ports.storage
    const whose = `${who} ${JSON.stringify(this.#known.parcel)}`
    this.#aside = new AsideShelf(storage, whose, this.#ports.now())
    return new WaitingShelf(storage, whose)
  }

  /** Decides between what the system handed back and what waits here; what was done meanwhile is added to it. */
  #takeUp(opened: Opened): void {
    this.#opened = opened
    const since = { work: this.#work, entries: this.#entries, isNew: this.#shelf === null }
    this.#shelf ??= this.#openShelves(opened.who)
    const here = this.#shelf.get()
    const there = opened.suspended === null ? null : resumeFrom(opened.suspended, this.#known.lesson)
    if (there && here?.attempt === there.marks.attempt) {
      this.#continue(here)
      this.#addWhatIsThere(there)
    } else if (there) {
      this.#marks = there.marks
      this.#work = there.work
      this.#entries = []
      if (here && !here.confirmed)
        this.#addDone(resumeFrom(here.text, this.#known.lesson)?.work ?? noWork, here.entries)
      else if (here) this.#setAside(here)
    } else if (here && (!here.confirmed || opened.suspended !== null)) {
      // Nothing of it has arrived there, or what has can no longer be read: the copy here is the better one.
      this.#continue(here)
    } else if (here) {
      // The system has begun a new attempt: what it had of the old one is its own affair.
      this.#setAside(here)
      this.#marks = this.#newMarks()
      this.#work = noWork
      this.#entries = []
    }
    if (since.isNew) this.#addDone(since.work, since.entries)
    this.#confirmed = there !== null
    this.#account = this.#accountOf(this.#work)
    if (opened.mode === 'normal') {
      this.#dirty = true
      this.#keep()
    } else this.#become({ kind: 'looking round', nextAt: null })
  }

  /** Only what has answers that never arrived is worth it. */
  #setAside(waiting: Waiting): void {
    if (waiting.entries.length > 0) this.#aside?.add({ ...waiting, since: this.#ports.now() })
  }

  #continue({ text, entries, attempt, confirmed }: Waiting): void {
    const kept = resumeFrom(text, this.#known.lesson)
    if (!kept) return
    this.#marks = { ...kept.marks, attempt }
    this.#work = kept.work
    this.#entries = [...entries]
    this.#confirmed = confirmed
    this.#account = this.#accountOf(kept.work)
  }

  /** The same attempt as the system knows it: what it has been told is not told again. */
  #addWhatIsThere({ marks, work }: { marks: Marks; work: Work }): void {
    const told = Math.max(this.#marks.told, marks.told)
    this.#entries = this.#entries.filter(({ number }) => number > told)
    // Where nothing waits here, the later of the two holds all of the other; a lesson may have been begun again in it.
    const isLater = marks.revision > this.#marks.revision && this.#entries.length === 0
    if (isLater) this.#work = work
    else if (marks.revision !== this.#marks.revision) this.#work = mergeWork(this.#work, work)
    const revision = Math.max(this.#marks.revision, marks.revision) + 1
    this.#marks = { ...this.#marks, told, revision, once: { ...this.#marks.once, ...marks.once } }
  }

  /** What was done before it was known where it belongs. */
  #addDone(work: Work, entries: readonly Entry[]): void {
    if (entries.length + Object.keys(work.lessons).length + work.drills.length === 0) return
    this.#work = mergeWork(work, this.#work)
    for (const entry of entries) this.#entries.push({ ...entry, number: this.#nextNumber() })
    this.#marks = { ...this.#marks, revision: this.#marks.revision + 1 }
  }

  /** Two pages of one learner number their entries alike; ours get numbers of their own. */
  #overtaken(text: string | null): void {
    const there = text === null ? null : resumeFrom(text, this.#known.lesson)
    if (!there) return
    const { attempt, told, once } = there.marks
    const revision = Math.max(this.#marks.revision, there.marks.revision) + 1
    const entries = this.#entries
    this.#entries = []
    this.#marks = { attempt, told: Math.max(this.#marks.told, told), revision, once: { ...this.#marks.once, ...once } }
    for (const entry of entries) this.#entries.push({ ...entry, number: this.#nextNumber() })
    this.#work = mergeWork(this.#work, there.work)
    this.#account = this.#accountOf(this.#work)
  }

  #newMarks(): Marks {
    return { attempt: this.#ports.newId(), revision: 0, told: 0, once: {} }
  }

  #enter(at: number, what: Entry['what']): void {
    const took = Math.min(longestTook, Math.max(0, (at - this.#lastAnswer) / 1000))
    if (what.kind === 'answered') this.#lastAnswer = at
    this.#entries.push({ number: this.#nextNumber(), id: this.#ports.newId(), at, took, what })
  }

  #nextNumber(): number {
    return Math.max(this.#marks.told, this.#entries.at(-1)?.number ?? 0) + 1
  }

  /** Some things may be told once in an attempt; their ids are fixed when they come true. */
  #onceBy({ completed, passed }: Account): Marks['once'] {
    const due = [...(completed ? ['completed'] : []), ...(passed === true ? ['passed'] : [])]
    const missing = due.filter((each) => !(each in this.#marks.once))
    return { ...this.#marks.once, ...Object.fromEntries(missing.map((each) => [each, this.#ports.newId()])) }
  }

  #keep(): void {
    const { text } = suspend(this.#marks, this.#work, (id) => this.#lesson(id), Infinity)
    const before = this.keeps
    this.#shelf?.put({ attempt: this.#marks.attempt, confirmed: this.#confirmed, text, entries: this.#entries })
    // Whoever shows where the work is kept has to know that this has changed.
    if (this.keeps !== before) this.#become({})
  }

  #dispatch(): Dispatch {
    const told = this.#entries.at(-1)?.number ?? this.#marks.told
    const { text, leftOut } = suspend({ ...this.#marks, told }, this.#work, (id) => this.#lesson(id), this.#system.room)
    if (leftOut !== this.#state.leftOut) this.#become({ leftOut })
    const now = this.#ports.now()
    return {
      account: this.#account,
      mastery: this.#mastery,
      suspended: text,
      entries: [...this.#entries],
      once: this.#marks.once,
      seconds: Math.max(0, (now - this.#begun) / 1000),
      now,
    }
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
      this.#overtaken(sent.suspended)
      this.#again(undefined)
    } else {
      this.#tries = 0
      const told = entries.at(-1)?.number ?? this.#marks.told
      this.#entries = this.#entries.filter(({ number }) => number > told)
      this.#marks = { ...this.#marks, told }
      this.#confirmed = true
      if (this.#state.kind === 'looking round') return
      this.#keep()
      this.#become({ kind: 'saved', savedAt: this.#ports.now(), nextAt: null, refused: sent.refused })
      if (this.#dirty) this.#schedule(this.#entries.length > 0 ? delays.answer : delays.other)
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

  get #mastery(): number | null {
    return this.#opened?.mastery ?? this.#known.parcel.mastery
  }

  #accountOf(work: Work): Account {
    const { parcel, titleOfDrill } = this.#known
    return accountOf({ ...parcel, mastery: this.#mastery }, work, (id) => this.#lesson(id), titleOfDrill)
  }

  #lesson(id: string): Lesson {
    const lesson = this.#known.lesson(id)
    if (!lesson) throw new Error(`No lesson ${id} is in the course.`)
    return lesson
  }

  #become(part: Partial<VisitState>): void {
    this.#state = { ...this.#state, ...part }
    for (const listener of this.#listeners) listener()
  }
}
