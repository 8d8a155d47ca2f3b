/**
 * One attempt as it is known here: the work, what of it the system has not confirmed, and the marks that tell what it has
 * been told (suspended.ts). Two copies of it, the system's and the browser's, become one here.
 */
import type { Account } from './account.ts'
import { accountOf } from './account.ts'
import { happenedBetween } from './journal.ts'
import type { Parcel } from './launch.ts'
import type { Marks, Suspended } from './suspended.ts'
import { resumeFrom, suspend } from './suspended.ts'
import type { Dispatch, Entry, Opened } from './system.ts'
import type { Waiting } from './waiting-shelf.ts'
import type { Work } from './work.ts'
import { mergeWork, noWork } from './work.ts'
import type { Lesson } from '../../lesson/lesson.ts'

/** The course as far as a visit needs it. */
export interface Known {
  readonly parcel: Parcel
  readonly lesson: (id: string) => Lesson | null
  readonly titleOfDrill: (number: number) => string
  readonly asksOfDrill: string
}

interface AttemptPorts {
  /** ms since 1970 */
  readonly now: () => number
  /** a new UUID */
  readonly newId: () => string
}

/** s: a longer time between two answers says nothing of the answer. */
const longestTook = 600

export class Attempt {
  readonly #known: Known
  readonly #ports: AttemptPorts
  #mastery: number | null
  #work: Work = noWork
  #account: Account
  #entries: Entry[] = []
  #marks: Marks
  #confirmed = false
  #lastAnswer: number

  constructor(known: Known, ports: AttemptPorts) {
    this.#known = known
    this.#ports = ports
    this.#mastery = known.parcel.mastery
    this.#lastAnswer = ports.now()
    this.#marks = this.#newMarks()
    this.#account = this.#accountOf(noWork)
  }

  get work(): Work {
    return this.#work
  }

  get account(): Account {
    return this.#account
  }

  /** What the system has not confirmed. */
  get entries(): readonly Entry[] {
    return this.#entries
  }

  /** The work as it stands now; true where something of it is to be told. */
  note(work: Work): boolean {
    const account = this.#accountOf(work)
    const before = { work: this.#work, account: this.#account }
    const news = happenedBetween(before, { work, account }, (id) => this.#lesson(id), this.#known.asksOfDrill)
    for (const { at, what } of news) this.#enter(at ?? this.#ports.now(), what)
    this.#work = work
    this.#account = account
    this.#marks = { ...this.#marks, revision: this.#marks.revision + 1, once: this.#onceBy(account) }
    return news.length > 0
  }

  /** Goes on with what waits here, where it can be read. */
  continue({ text, entries, attempt, confirmed }: Waiting): void {
    const kept = resumeFrom(text, this.#known.lesson)
    if (!kept) return
    this.#marks = { ...kept.marks, attempt }
    this.#work = kept.work
    this.#entries = [...entries]
    this.#confirmed = confirmed
    this.#account = this.#accountOf(kept.work)
  }

  /**
   * Decides between what the system handed back and what waits here; `since`, done before it was known where it belongs, is
   * added to it. Returns what waits here of an attempt that the system no longer knows.
   */
  takeUp({ suspended, mastery }: Opened, here: Waiting | null, since: DoneBefore | null): Waiting | null {
    this.#mastery = mastery ?? this.#known.parcel.mastery
    const there = suspended === null ? null : resumeFrom(suspended, this.#known.lesson)
    let gone: Waiting | null = null
    if (there && here?.attempt === there.marks.attempt) {
      this.continue(here)
      this.#addWhatIsThere(there)
    } else if (there) {
      this.#begin(there.marks, there.work)
      if (here && !here.confirmed)
        this.#addDone({ work: resumeFrom(here.text, this.#known.lesson)?.work ?? noWork, entries: here.entries })
      else gone = here
    } else if (here && (!here.confirmed || suspended !== null)) {
      // Nothing of it has arrived there, or what has can no longer be read: the copy here is the better one.
      this.continue(here)
    } else if (here) {
      // The system has begun a new attempt: what it had of the old one is its own affair.
      gone = here
      this.#begin(this.#newMarks(), noWork)
    }
    if (since) this.#addDone(since)
    this.#confirmed = there !== null
    this.#account = this.#accountOf(this.#work)
    return gone
  }

  /** Two pages of one learner number their entries alike; ours get numbers of their own. */
  overtaken(text: string | null): void {
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

  /** The system has confirmed these entries, and all before them. */
  confirm(entries: readonly Entry[]): void {
    const told = entries.at(-1)?.number ?? this.#marks.told
    this.#entries = this.#entries.filter(({ number }) => number > told)
    this.#marks = { ...this.#marks, told }
    this.#confirmed = true
  }

  /** Nothing is left to be told, as after the last word of a visit. */
  forgetEntries(): void {
    this.#entries = []
  }

  /** As the browser keeps it. */
  kept(): Waiting {
    const { text } = this.#suspend(this.#marks, Infinity)
    return { attempt: this.#marks.attempt, confirmed: this.#confirmed, text, entries: this.#entries }
  }

  /** What a system is told, in a text of no more than `room` characters; and what there was no room for. */
  told(
    room: number,
  ): Pick<Dispatch, 'account' | 'mastery' | 'suspended' | 'entries' | 'once'> & Pick<Suspended, 'leftOut'> {
    const told = this.#entries.at(-1)?.number ?? this.#marks.told
    const { text, leftOut } = this.#suspend({ ...this.#marks, told }, room)
    const { once } = this.#marks
    return {
      account: this.#account,
      mastery: this.#mastery,
      suspended: text,
      entries: [...this.#entries],
      once,
      leftOut,
    }
  }

  #begin(marks: Marks, work: Work): void {
    this.#marks = marks
    this.#work = work
    this.#entries = []
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

  #addDone({ work, entries }: DoneBefore): void {
    if (entries.length + Object.keys(work.lessons).length + work.drills.length === 0) return
    this.#work = mergeWork(work, this.#work)
    for (const entry of entries) this.#entries.push({ ...entry, number: this.#nextNumber() })
    this.#marks = { ...this.#marks, revision: this.#marks.revision + 1 }
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

  #suspend(marks: Marks, room: number): Suspended {
    return suspend(marks, this.#work, (id) => this.#lesson(id), room)
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
}

interface DoneBefore {
  readonly work: Work
  readonly entries: readonly Entry[]
}
