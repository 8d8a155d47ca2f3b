/** A learning system as the page sees it, whatever standard it speaks. */
import type { Account, Task } from './account.ts'
import type { Answered } from './answered.ts'
import type { ResultExtensions } from '../../session/statement-extensions.ts'

/** Something that happened once and is told once. */
export interface Entry {
  /** its place in the journal of the attempt, from 1 */
  readonly number: number
  /** a UUID, fixed when it happened, so that it can be told again without counting twice */
  readonly id: string
  /** ms since 1970 */
  readonly at: number
  /** s it took the learner */
  readonly took: number
  readonly what:
    | { readonly kind: 'answered'; readonly answered: Answered }
    /** `more` is missing of a drill, and where an older program left it */
    | { readonly kind: 'finished'; readonly task: Task; readonly more?: ResultExtensions }
}

/** normal counts; the others only look around, and nothing but the visit itself is told. */
export type Mode = 'normal' | 'browse' | 'review'

/** What the system says as a visit begins. */
export interface Opened {
  /** whose work this is and of what: keeps what waits for it apart from that of others; empty where it does not say */
  readonly who: string
  /** as the system calls the learner; empty where it does not say */
  readonly learner: string
  readonly mode: Mode
  /** what it was handed last; null at the first visit */
  readonly suspended: string | null
  /** pass mark as share of 1, where the system sets its own */
  readonly mastery: number | null
  /** language tags the learner prefers, the best first */
  readonly languages: readonly string[]
  /** where to go when the visit ends */
  readonly returnTo: string | null
}

/** Everything there is to tell. */
export interface Dispatch {
  readonly account: Account
  /** null at a visit that does not count */
  readonly mastery: number | null
  /** handed back at the next visit */
  readonly suspended: string
  /** those the system has not confirmed yet, the first first */
  readonly entries: readonly Entry[]
  /** ids of what may be told once in an attempt, by what it is */
  readonly once: Readonly<Record<string, string>>
  /** s of this visit so far */
  readonly seconds: number
  /** ms since 1970 */
  readonly now: number
}

export type Sent =
  /** all of it is there, but for the parts it will never take */
  | { readonly kind: 'taken'; readonly refused: readonly string[] }
  /** nothing is lost, and it is worth trying again; ms the system asks to wait */
  | { readonly kind: 'later'; readonly wait?: number }
  /** another page of the same learner has told it something since: what it has now */
  | { readonly kind: 'overtaken'; readonly suspended: string | null }
  /** it takes no more from this visit */
  | { readonly kind: 'closed' }

export interface LearningSystem {
  /** characters it keeps for the next visit */
  readonly room: number
  /** whose work it is, where that is known before the system has answered (Opened.who) */
  readonly who: string | null
  open: () => Promise<Opened | 'later' | 'closed'>
  send: (dispatch: Dispatch) => Promise<Sent>
  /**
   * The last words of a visit, said without waiting for an answer: the page is being closed. Whether it is known already
   * that all of it is there.
   */
  close: (dispatch: Dispatch) => boolean
}
