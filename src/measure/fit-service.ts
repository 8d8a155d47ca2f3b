/** What a worker does for a fit: sent the task, it tells of every step and of the end. */
import type { FitTask } from './fit.ts'
import { fitPress } from './fit.ts'
import type { FromFitWorker } from './fit-message.ts'

export function fitService(tell: (message: FromFitWorker) => void): (task: FitTask) => void {
  return (task) => {
    const steps = fitPress(task)
    let next = steps.next()
    for (; !next.done; next = steps.next()) tell({ kind: 'step', progress: next.value })
    tell({ kind: 'done', result: next.value })
  }
}
