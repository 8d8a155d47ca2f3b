/** A learner who goes through lessons of the course the author's way, with a miss where the test wants one. */
import type { Bench } from '../../../src/lesson/bench.ts'
import { begin, currentStep, goOn, handIn } from '../../../src/lesson/progress.ts'
import { answerOf } from '../../../src/lesson/step.ts'
import { walk } from '../../../src/lesson/walk.ts'
import type { Work } from '../../../src/report/learning-system/work.ts'
import { noWork } from '../../../src/report/learning-system/work.ts'
import { writeSetUp } from '../../../src/session/write-setup.ts'
import { lessonOf } from './course.ts'

export class Learner {
  work: Work
  readonly #now: () => number

  constructor(now: () => number, before: Work = noWork) {
    this.work = before
    this.#now = now
  }

  open(id: string): void {
    const progress =
      id in this.work.lessons ? this.work.lessons[id].progress : begin(lessonOf(id), undefined, this.#moment)
    this.#keep(id, progress, walk(lessonOf(id))[0].opens)
  }

  /** Hands in the open step, rightly or as the bench stood when the step opened; then goes on if it is done. */
  step(how: 'right' | 'wrong' = 'right'): void {
    const lesson = lessonOf(this.work.open)
    const { progress } = this.work.lessons[lesson.id]
    const station = walk(lesson).find(({ step }) => step === progress.step)
    const way = lesson.solution.find(({ step }) => step === progress.step)
    if (!station) throw new Error(`${lesson.id} has no step ${progress.step}.`)
    const { kind } = currentStep(lesson, progress)
    const bench = how === 'right' ? station.done : station.opens
    const answer = way && answerOf(way)
    const given = how === 'wrong' && answer && 'enter' in answer ? { enter: answer.enter + 1e5 } : answer
    const handed = kind === 'say' ? progress : handIn(lesson, progress, bench, given, this.#moment).progress
    this.#keep(lesson.id, how === 'right' ? goOn(lesson, handed, this.#moment) : handed, bench)
  }

  /** Every step of the lesson from where it stands. */
  finish(): void {
    for (let step = lessonOf(this.work.open).steps.length; step > 0; step--) this.step()
  }

  #keep(id: string, progress: Work['lessons'][string]['progress'], { setUp, patch }: Bench): void {
    const bench = { setUp: writeSetUp(setUp), patch }
    this.work = { ...this.work, open: id, lessons: { ...this.work.lessons, [id]: { progress, bench } } }
  }

  get #moment(): string {
    return new Date(this.#now()).toISOString()
  }
}
