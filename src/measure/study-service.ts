/** What a worker does for one study; see study.ts. */
import type { FromStudyWorker, Study } from './study.ts'
import { study } from './study.ts'

/** Share of the work between two tellings of how far it is. */
const between = 0.01

export function studyService(tell: (message: FromStudyWorker) => void): (asked: Study) => void {
  return (asked) => {
    const steps = study(asked)
    let told = 0
    for (;;) {
      const step = steps.next()
      if (step.done) {
        tell({ kind: 'done', found: step.value })
        return
      }
      if (step.value - told < between) continue
      told = step.value
      tell({ kind: 'step', share: step.value })
    }
  }
}
