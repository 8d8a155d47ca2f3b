/** Entry of every worker of the page; the name it is started by says what it does. */
import type { WorkerService } from './worker-services.ts'
import { workerServices } from './worker-services.ts'

const serve = workerServices[self.name as WorkerService]((message, transfer = []) => {
  postMessage(message, { transfer })
}) as (message: unknown) => void

addEventListener('message', ({ data }: MessageEvent<unknown>) => {
  serve(data)
})
