/** The drill of a session: what is open, the learner's work on it and what it was judged, and the record of all drills. */
import type { Cause } from '../drill/cause.ts'
import type { Cure } from '../drill/cure.ts'
import type { Drill, DrillRequest } from '../drill/drill.ts'
import { kindDrawn } from '../drill/drill.ts'
import type { Evidence } from '../drill/evidence.ts'
import type { Level } from '../drill/level.ts'
import { writeDrill } from '../drill/link.ts'
import { nextKind } from '../drill/practice.ts'
import type { Work, WorkVerdict } from '../drill/work.ts'
import { cure, diagnose, noWork, take } from '../drill/work.ts'
import { ActiveTime } from './active-time.ts'
import type { AskDrill } from './drilling.ts'
import { drillAsker } from './drilling.ts'
import { drillLeftOpen, keepDrill, keptDrill } from './drill-kept.ts'
import type { DrillEntry, RecordStorage } from './drill-record.ts'
import { attemptsIn, readRecord, writeRecord } from './drill-record.ts'
import { wayOn, worthOf } from './drill-way.ts'
import type { Session } from './session.ts'

export const drillParts = ['drill', 'remedies', 'record'] as const
export type DrillPart = (typeof drillParts)[number]

export interface DrillState {
  readonly part: DrillPart
  readonly level: Level
  /** what was asked for; the drill follows once it is made */
  readonly request: DrillRequest | null
  readonly drill: Drill | null
  readonly problem: string | null
  readonly work: Work
  /** null until judged */
  readonly verdict: WorkVerdict | null
  /** what is being judged */
  readonly judging: 'diagnosis' | 'cure' | null
  /** whether the learner has asked for the answer */
  readonly answerShown: boolean
  readonly record: readonly DrillEntry[]
  /** whether the browser keeps the record */
  readonly keeps: boolean
}

/** The sheet lies on the table from the start. */
const firstLook: Work = take(noWork, { kind: 'eye', unit: null })

const closed = { drill: null, problem: null, work: firstLook, verdict: null, judging: null, answerShown: false }

export class DrillDesk {
  #state: DrillState
  /** counts what was asked for, so that an answer that comes too late is known */
  #turn = 0
  readonly #ask: AskDrill
  readonly #storage: RecordStorage | null
  readonly #listeners = new Set<() => void>()
  readonly #now: (() => number) | null
  /** how long somebody is at work on the drill; whoever shows it says when it is seen */
  readonly time: ActiveTime

  /** `now` in ms since 1970; without it the record knows no times. */
  constructor(storage: RecordStorage | null, ask: AskDrill = drillAsker(), now: (() => number) | null = null) {
    this.#storage = storage
    this.#ask = ask
    this.#now = now
    this.time = new ActiveTime(now ?? (() => 0))
    const record = readRecord(storage)
    this.#state = { ...closed, part: 'drill', level: 'easy', request: null, record, keeps: storage !== null }
  }

  get state(): DrillState {
    return this.#state
  }

  show(part: DrillPart): void {
    this.#set({ part })
  }

  setLevel(level: Level): void {
    this.#set({ level })
  }

  /** Opens the drill of this request where it was left, or `afresh` from its beginning. */
  async open(request: DrillRequest, afresh = false): Promise<void> {
    const turn = ++this.#turn
    this.time.take()
    this.#set({ ...closed, part: 'drill', level: request.level, request })
    const answer = await this.#ask({ kind: 'make', request })
    if (turn !== this.#turn) return
    if (answer.kind === 'made') {
      const kept = afresh ? undefined : keptDrill(this.#storage, request)
      this.#set({ drill: answer.drill, work: kept?.work ?? firstLook, answerShown: kept?.answerShown ?? false })
      if (kept?.work.diagnosis) await this.#judge(kept.work, 'diagnosis')
    }
    if (answer.kind === 'failed') this.#set({ problem: answer.reason })
  }

  /** Opens the drill that was left unfinished, if there is one. */
  async takeUp(): Promise<void> {
    const left = drillLeftOpen(this.#storage)
    if (left) await this.open(left)
  }

  /** Opens the next drill of the level: of the kind that practice returns to. */
  next(): Promise<void> {
    const { level, record, request } = this.#state
    const used = new Set(record.map(({ drill }) => drill))
    const kind = nextKind(attemptsIn(record), record.length)
    let seed = (request?.seed ?? record.length) + 1
    while (kindDrawn({ seed, level }) !== kind || used.has(writeDrill({ seed, level }))) seed++
    return this.open({ seed, level })
  }

  take(evidence: Evidence, readings = 1): void {
    this.time.move()
    this.#set({ work: take(this.#state.work, evidence, readings) })
  }

  async name(causes: readonly Cause[], evidence: readonly Evidence[]): Promise<void> {
    const verdict = await this.#judge(diagnose(this.#state.work, causes, evidence), 'diagnosis')
    if (verdict) this.#note(verdict, true)
  }

  async cure(applied: Cure): Promise<void> {
    const verdict = await this.#judge(cure(this.#state.work, applied), 'cure')
    if (verdict) this.#note(verdict, false)
  }

  async takeBackCure(): Promise<void> {
    const { work } = this.#state
    const verdict = await this.#judge({ ...work, cures: work.cures.slice(0, -1) }, 'cure')
    if (verdict) this.#note(verdict, false)
  }

  showAnswer(): void {
    this.#set({ answerShown: true })
  }

  clearRecord(): void {
    this.#keep([])
  }

  /** Calls `listener` after every change; returns what ends that. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** The verdict; null where something else has been asked for meanwhile. Evidence may be taken while it is judged. */
  async #judge(work: Work, judging: DrillState['judging']): Promise<WorkVerdict | null> {
    const { drill } = this.#state
    if (!drill) return null
    const turn = ++this.#turn
    this.#set({ work, judging })
    const answer = await this.#ask({ kind: 'judge', drill, work })
    if (turn !== this.#turn) return null
    if (answer.kind !== 'judged') {
      this.#set({ judging: null, problem: answer.kind === 'failed' ? answer.reason : null })
      return null
    }
    this.#set({ judging: null, verdict: answer.verdict })
    return answer.verdict
  }

  /** Writes down what came of it; one line for each drill, whose first answer stays. */
  #note(verdict: WorkVerdict, named: boolean): void {
    const { drill, work, record } = this.#state
    if (!drill) return
    const code = writeDrill(drill.request)
    const before = record.find((each) => each.drill === code)
    const at = this.#now ? new Date(this.#now()).toISOString() : undefined
    const entry: DrillEntry = {
      drill: code,
      job: drill.job,
      kind: drill.faults[0].kind,
      first: before?.first ?? worthOf(verdict),
      tries: (before?.tries ?? 0) + (named ? 1 : 0),
      taken: work.taken.length,
      cured: verdict.cured || (before?.cured ?? false),
      way: wayOn(before?.way, drill, work, verdict, { named, at, active: this.time.take() }),
    }
    this.#keep(before ? record.map((each) => (each === before ? entry : each)) : [...record, entry])
  }

  #keep(record: readonly DrillEntry[]): void {
    this.#set({ record, keeps: writeRecord(this.#storage, record) })
  }

  #set(part: Partial<DrillState>): void {
    this.#state = { ...this.#state, ...part }
    const { drill, work, answerShown, verdict } = this.#state
    if (drill && ('work' in part || 'answerShown' in part || 'verdict' in part)) {
      keepDrill(this.#storage, drill.request, { work, answerShown, finished: verdict?.cured ?? false })
    }
    for (const listener of this.#listeners) listener()
  }
}

const desks = new WeakMap<Session, DrillDesk>()

/** The one desk of drills of this session; `storage` is looked at the first time only. */
export function drillDeskOf(session: Session, storage: () => RecordStorage | null, now: () => number): DrillDesk {
  let desk = desks.get(session)
  if (!desk) desks.set(session, (desk = new DrillDesk(storage(), undefined, now)))
  return desk
}
