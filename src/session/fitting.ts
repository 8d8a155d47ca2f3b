/** Fitting takes long with many inks: it runs in a worker, or where none starts step by step beside the page's own work. */
import type { FromFitWorker } from '../measure/fit-message.ts'
import type { Fit, FitTask } from '../measure/fit.ts'
import { fitPress } from '../measure/fit.ts'
import type { FitProgress } from '../measure/fit-search.ts'
import type { Refused } from '../measure/said.ts'
import { silence } from './silence.ts'
import { startWorker } from './start-worker.ts'

interface Told {
  step: (progress: FitProgress) => void
  done: (result: Fit | Refused) => void
}

/** Starts a fit; the function returned calls it off, and nothing more is told then. */
export function startFitting(task: FitTask, told: Told): () => void {
  let cancel: () => void
  const inSlices = (): void => {
    cancel = fitInSlices(task, told)
  }
  try {
    cancel = fitInWorker(task, told, inSlices)
  } catch (error) {
    // No workers at all, or none for a page opened from a file.
    if (!(error instanceof ReferenceError || error instanceof DOMException)) throw error
    inSlices()
  }
  return () => {
    cancel()
  }
}

/** `failed` is called where the worker's code cannot be had, which some browsers say only later. */
function fitInWorker(task: FitTask, told: Told, failed: () => void): () => void {
  const worker = startWorker('fit')
  const end = () => {
    quiet.stop()
    worker.terminate()
  }
  const lost = () => {
    end()
    failed()
  }
  const quiet = silence(lost)
  worker.addEventListener('error', lost)
  worker.addEventListener('message', ({ data }: MessageEvent<FromFitWorker>) => {
    if (data.kind === 'step') {
      quiet.wait()
      told.step(data.progress)
      return
    }
    end()
    told.done(data.result)
  })
  worker.postMessage(task)
  quiet.wait()
  return end
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
