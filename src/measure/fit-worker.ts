/** Entry of a worker that fits the model to a press sheet, in a browser: it is sent the task and tells of every step. */
import type { FitTask } from './fit.ts'
import { fitPress } from './fit.ts'
import type { FromFitWorker } from './fit-message.ts'

addEventListener('message', ({ data }: MessageEvent<FitTask>) => {
  const tell = (message: FromFitWorker) => {
    postMessage(message)
  }
  const steps = fitPress(data)
  let next = steps.next()
  for (; !next.done; next = steps.next()) tell({ kind: 'step', progress: next.value })
  tell({ kind: 'done', result: next.value })
})
