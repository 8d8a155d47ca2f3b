/** A study takes long: it runs in a worker, or where none starts step by step beside the page's own work. */
import type { Findings, FromStudyWorker, Study, StudyKind } from '../measure/study.ts'
import { study } from '../measure/study.ts'
import { silence } from './silence.ts'
import { startWorker } from './start-worker.ts'

interface Told<Kind extends StudyKind> {
  /** share done, from 0 to 1 */
  step: (share: number) => void
  done: (found: Findings[Kind]) => void
}

/** Starts a study; the function returned calls it off, and nothing more is told then. */
export function startStudy<Kind extends StudyKind>(asked: Study<Kind>, told: Told<Kind>): () => void {
  let cancelSlices: (() => void) | undefined
  let worker: Worker | undefined
  const done = (found: Findings[StudyKind]) => told.done(found as Findings[Kind])
  const end = () => {
    quiet.stop()
    worker?.terminate()
  }
  const slices = () => {
    end()
    cancelSlices = studyInSlices(asked, { ...told, done })
  }
  const quiet = silence(slices)
  try {
    worker = startWorker('study')
    // A page opened from a file gets no worker, and says so only here.
    worker.addEventListener('error', slices)
    worker.addEventListener('message', ({ data }: MessageEvent<FromStudyWorker>) => {
      if (data.kind === 'step') {
        quiet.wait()
        told.step(data.share)
      } else {
        end()
        done(data.found)
      }
    })
    worker.postMessage(asked)
    quiet.wait()
  } catch (error) {
    // No workers at all, or none for a page opened from a file.
    if (!(error instanceof ReferenceError || error instanceof DOMException)) throw error
    slices()
  }
  return () => {
    end()
    cancelSlices?.()
  }
}

/** ms of work at a time, and between two such times, in which the page has its turn. */
const slice = { work: 12, pause: 4 }

function studyInSlices(asked: Study, told: Told<StudyKind>): () => void {
  const steps = study(asked)
  let timer = setTimeout(function work() {
    const until = performance.now() + slice.work
    for (;;) {
      const next = steps.next()
      if (next.done) {
        told.done(next.value)
        return
      }
      if (performance.now() < until) continue
      told.step(next.value)
      timer = setTimeout(work, slice.pause)
      return
    }
  }, slice.pause)
  return () => {
    clearTimeout(timer)
  }
}
