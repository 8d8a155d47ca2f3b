/** Fitting takes long with many inks: it runs in a worker, or where none starts step by step beside the page's own work. */
import type { FromFitWorker } from '../measure/fit-message.ts'
import type { Fit, FitTask } from '../measure/fit.ts'
import { fitPress } from '../measure/fit.ts'
import type { FitProgress } from '../measure/fit-search.ts'
import type { Refused } from '../measure/said.ts'

interface Told {
  step: (progress: FitProgress) => void
  done: (result: Fit | Refused) => void
}

/** Starts a fit; the function returned calls it off, and nothing more is told then. */
export function startFitting(task: FitTask, told: Told): () => void {
  let cancelSlices: (() => void) | undefined
  let worker: Worker | undefined
  const slices = () => {
    worker?.terminate()
    cancelSlices = fitInSlices(task, told)
  }
  try {
    worker = new Worker(new URL('../measure/fit-worker.ts', import.meta.url), { type: 'module' })
    // A page opened from a file gets no worker, and says so only here.
    worker.addEventListener('error', slices)
    worker.addEventListener('message', ({ data }: MessageEvent<FromFitWorker>) => {
      if (data.kind === 'step') told.step(data.progress)
      else {
        worker?.terminate()
        told.done(data.result)
      }
    })
    worker.postMessage(task)
  } catch (error) {
    if (!(error instanceof DOMException)) throw error
    slices()
  }
  return () => {
    worker?.terminate()
    cancelSlices?.()
  }
}

/** Milliseconds between steps, in which the page has its turn. */
const pause = 4

function fitInSlices(task: FitTask, told: Told): () => void {
  const steps = fitPress(task)
  let timer = setTimeout(function step() {
    const next = steps.next()
    if (next.done) told.done(next.value)
    else {
      told.step(next.value)
      timer = setTimeout(step, pause)
    }
  }, pause)
  return () => {
    clearTimeout(timer)
  }
}
