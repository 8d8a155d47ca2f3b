/**
 * One lesson being done on the session's bench: which step is open, what has been handed in, and what is kept of it. The
 * runner draws it; nothing in here knows of a page.
 */
import type { Control } from '../../lesson/control.ts'
import { controls } from '../../lesson/control.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import type { Progress } from '../../lesson/progress.ts'
import {
  askHint,
  begin,
  currentStep,
  goBack,
  goOn,
  handIn,
  recordOf,
  resume,
  retry,
  spend,
} from '../../lesson/progress.ts'
import { openControls, startOf } from '../../lesson/replay.ts'
import type { Answer, Step } from '../../lesson/step.ts'
import { openStep, walk } from '../../lesson/walk.ts'
import type { Bench } from '../../lesson/bench.ts'
import { ActiveTime } from '../../session/active-time.ts'
import type { Learning } from '../../session/learning.ts'
import { benchNow, lastUnitIn, putOnBench, stopSheet } from '../../session/lesson-bench.ts'
import type { Session } from '../../session/session.ts'
import type { Missed } from './outcome.ts'

interface Kept {
  progress: Progress
  bench: Bench
  setUp: unknown
  leftOut: unknown
}

export class LessonPlay {
  readonly lesson: Lesson
  readonly #session: Session
  readonly #learning: Learning | null
  readonly #key: string
  readonly #taken: number
  #progress: Progress
  /** the bench as the open step found it; unknown after a reload */
  #opened: Bench | null = null
  #missed: Missed | null = null
  /** the bench for which the sheet was stopped last */
  #stopped: Pick<Kept, 'setUp' | 'leftOut'> = { setUp: null, leftOut: null }
  /** what was kept last, so that only changes are written */
  #kept: Kept | null = null

  readonly #now: () => number
  /** how long somebody is at work on it; whoever shows it says when it is seen */
  readonly time: ActiveTime

  /** Without `learning` nothing is kept, as in an author's preview. `now` in ms since 1970. */
  constructor(
    lesson: Lesson,
    session: Session,
    key: string,
    learning: Learning | null,
    now: () => number,
    before?: LessonPlay,
  ) {
    this.#now = now
    this.time = new ActiveTime(now)
    this.lesson = lesson
    this.#session = session
    this.#learning = learning
    this.#key = key
    this.#taken = learning?.taken ?? 0
    const kept = learning?.lesson(key)
    const place = before ? before.progress : kept?.progress
    this.#progress = resume(lesson, place) ?? begin(lesson, undefined, this.#moment)
    if (!before) session.lend()
    if (before) return
    if (kept?.bench) this.#put(kept.bench)
    else this.#openAsAuthor()
    this.#stop()
  }

  /** The same place in another version of the lesson, as while it is being written; the bench stays as it is. */
  static inPlaceOf(before: LessonPlay, lesson: Lesson): LessonPlay {
    const play = new LessonPlay(lesson, before.#session, before.#key, null, before.#now, before)
    const { sheetAfter, sheetIn } = play.step
    if (sheetAfter !== before.step.sheetAfter || sheetIn !== before.step.sheetIn) play.#stop()
    return play
  }

  /** The same play of the lesson in another language's edition of it; what was told of a try is told no longer. */
  inEdition(lesson: Lesson): LessonPlay {
    const play = new LessonPlay(lesson, this.#session, this.#key, this.#learning, this.#now, this)
    play.#opened = this.#opened
    play.#kept = this.#kept
    return play
  }

  get progress(): Progress {
    return this.#progress
  }

  get step(): Step {
    return currentStep(this.lesson, this.#progress)
  }

  get index(): number {
    return this.lesson.steps.indexOf(this.step)
  }

  /** Terms of this lesson that have been explained by the furthest step the learner has been at. */
  get explained(): string[] {
    const { steps } = this.lesson
    const furthest = steps.findLastIndex(({ id }) => id === this.step.id || recordOf(this.#progress, id).done)
    return steps.slice(0, furthest + 1).flatMap(({ explains }) => explains ?? [])
  }

  get missed(): Missed | null {
    return this.#missed
  }

  /** Whether a prediction is asked for and not yet made. */
  get predicting(): boolean {
    return this.step.kind === 'predict' && !recordOf(this.#progress, this.step.id).done
  }

  /** Whether what is read leads up to a prediction not yet made, which a reading seen before would give away. */
  get predictingSoon(): boolean {
    const { steps } = this.lesson
    const next = steps.slice(this.index).find(({ kind }) => kind !== 'say')
    return this.step.kind === 'say' && next?.kind === 'predict' && !recordOf(this.#progress, next.id).done
  }

  /** Controls that the lesson keeps as they are. */
  get closed(): readonly Control[] {
    const open = openControls(this.lesson)
    return controls.filter((control) => !open.includes(control))
  }

  goOn(): void {
    const before = this.step
    this.#turnTo(goOn(this.lesson, this.#progress, this.#moment))
    const { changes } = this.step
    if (this.step === before) return
    if (recordOf(this.#progress, this.step.id).done) {
      this.#stop()
      return
    }
    if (changes) this.#put(openStep(benchNow(this.#session), changes))
    this.#opened = benchNow(this.#session)
    this.#stop()
  }

  goBack(): void {
    this.#turnTo(goBack(this.lesson, this.#progress))
    this.#stop()
  }

  /** Any step, on the bench as the author's own way leads there. */
  jumpTo(step: string): void {
    this.#turnTo({ ...this.#progress, step })
    this.#openAsAuthor()
    this.#stop()
  }

  startAgain(): void {
    this.#turnTo(begin(this.lesson, undefined, this.#moment))
    this.#missed = null
    this.#openAsAuthor()
    this.#stop()
  }

  handIn(answer?: Answer): void {
    const bench = benchNow(this.#session)
    const { progress, verdict } = handIn(this.lesson, this.#progress, bench, answer, this.#moment)
    this.#progress = progress
    this.#missed = verdict && !verdict.met ? { verdict, bench } : null
    if (this.step.kind === 'predict') this.#stop()
  }

  askHint(): void {
    this.#progress = askHint(this.lesson, this.#progress)
  }

  /** The step is open again, and the bench as it was when the step began. */
  retry(): void {
    this.#progress = retry(this.lesson, this.#progress)
    this.#missed = null
    this.setBack()
  }

  setBack(): void {
    if (this.#opened) putOnBench(this.#session, this.#opened)
    else this.#openAsAuthor()
    this.#stop()
  }

  /**
   * To be called once the bench may have been changed: the sheet then stands again where the step names it. Where it names
   * nothing, another patch is looked at where its last ink has been laid.
   */
  follow(): void {
    const session = this.#session
    const { setUp, leftOut } = this.#stopped
    const otherPatch = leftOut !== session.look.leftOut
    if (setUp === session.setUp && !otherPatch) return
    if (this.#isNamed) this.#stop()
    else if (otherPatch) session.play({ kind: 'look at unit', unit: lastUnitIn(session.patch) })
    this.#stopped = { setUp: session.setUp, leftOut: session.look.leftOut }
  }

  /** Whether progress has come from elsewhere since this lesson was opened, so that it has to be opened anew. */
  get isOvertaken(): boolean {
    return this.#learning !== null && this.#learning.taken !== this.#taken
  }

  /** Writes down where the learner stands, if anything has changed. */
  keep(): void {
    this.time.move()
    const { setUp, look, isLent } = this.#session
    if (!isLent) return
    const { leftOut } = look
    const kept = this.#kept
    if (kept && kept.progress === this.#progress && kept.setUp === setUp && kept.leftOut === leftOut) return
    this.#write({ setUp, leftOut, bench: benchNow(this.#session) })
  }

  /** Writes down the time as well, when the page is hidden or the lesson left; the bench may be another's by now. */
  leave(): void {
    this.time.pause()
    if (this.#kept) this.#write(this.#kept)
  }

  #write(kept: Omit<Kept, 'progress'>): void {
    if (this.isOvertaken) return
    const seconds = this.time.take()
    if (seconds > 0) this.#progress = spend(this.#progress, seconds)
    this.#kept = { ...kept, progress: this.#progress }
    this.#learning?.keep(this.#key, this.#progress, kept.bench)
  }

  get #moment(): string {
    return new Date(this.#now()).toISOString()
  }

  #turnTo(progress: Progress): void {
    if (progress.step !== this.#progress.step) {
      this.#opened = null
      this.#missed = null
    }
    this.#progress = progress
  }

  #openAsAuthor(): void {
    const station = walk(this.lesson).find(({ step }) => step === this.#progress.step)
    this.#put(station?.opens ?? startOf(this.lesson))
    this.#opened = benchNow(this.#session)
  }

  /** Whether the step names where the sheet stands. */
  get #isNamed(): boolean {
    return this.step.sheetAfter !== undefined || this.step.sheetIn !== undefined
  }

  /**
   * Stops the sheet where the step names it. Of the others, those that ask for something are met with the sheet through
   * all units, and those that only tell leave a sheet alone that stands still.
   */
  #stop(): void {
    const session = this.#session
    const { kind } = this.step
    if (this.#isNamed || kind === 'do' || kind === 'expect' || session.playback.playing) stopSheet(session, this.step)
    this.#stopped = { setUp: session.setUp, leftOut: session.look.leftOut }
  }

  /** What the lesson itself does to the bench is not the learner's to undo. */
  #put(bench: Bench): void {
    putOnBench(this.#session, bench)
    this.#session.lend()
  }
}
