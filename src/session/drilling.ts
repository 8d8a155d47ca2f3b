/** Asks a worker to make and judge drills; where none starts, the page does it itself once it has drawn what it says. */
import type { DrillAnswer, DrillTask } from '../drill/drill-service.ts'
import { answerDrillTask } from '../drill/drill-service.ts'
import { silence } from './silence.ts'
import { startWorker } from './start-worker.ts'

export type AskDrill = (task: DrillTask) => Promise<DrillAnswer>

interface Waiting {
  readonly task: DrillTask
  readonly resolve: (answer: DrillAnswer) => void
}

/** One worker for all tasks, as it keeps what it has worked out about each job. */
export function drillAsker(): AskDrill {
  const waiting = new Map<number, Waiting>()
  let worker: Worker | null | undefined
  let last = 0
  const inPage = (id: number) => {
    const asked = waiting.get(id)
    if (!asked) return
    waiting.delete(id)
    setTimeout(() => asked.resolve(answerDrillTask(asked.task)))
  }
  const withoutWorker = () => {
    quiet.stop()
    worker?.terminate()
    worker = null
    for (const id of [...waiting.keys()]) inPage(id)
  }
  const quiet = silence(withoutWorker)
  const start = (): Worker | null => {
    try {
      const started = startWorker('drills')
      // A page opened from a file gets no worker, and says so only here.
      started.addEventListener('error', withoutWorker)
      started.addEventListener('message', ({ data }: MessageEvent<{ id: number; answer: DrillAnswer }>) => {
        waiting.get(data.id)?.resolve(data.answer)
        waiting.delete(data.id)
        if (waiting.size > 0) quiet.wait()
        else quiet.stop()
      })
      return started
    } catch (error) {
      // No workers at all, or none for a page opened from a file.
      if (!(error instanceof ReferenceError || error instanceof DOMException)) throw error
      return null
    }
  }
  return (task) =>
    new Promise((resolve) => {
      const id = ++last
      waiting.set(id, { task, resolve })
      if (worker === undefined) worker = start()
      if (!worker) {
        inPage(id)
        return
      }
      worker.postMessage({ id, task })
      quiet.wait()
    })
}
