/** A ranking worker of a browser. */
import type { OrderWorker } from '../measure/order-pool.ts'
import type { FromOrderWorker } from '../measure/order-service.ts'
import { silence } from './silence.ts'
import { startWorker } from './start-worker.ts'

export function browserOrderWorker(): OrderWorker {
  const worker = startWorker('orders')
  let tell: (error: Error) => void = () => undefined
  const quiet = silence(() => {
    tell(new Error('The worker says nothing any more.'))
  })
  return {
    send: (message) => {
      worker.postMessage(message)
      quiet.wait()
    },
    onMessage: (listen) => {
      worker.addEventListener('message', ({ data }: MessageEvent<FromOrderWorker>) => {
        if (data.kind === 'batch') quiet.wait()
        else quiet.stop()
        listen(data)
      })
    },
    onError: (listen) => {
      tell = listen
      worker.addEventListener('error', ({ message }) => {
        listen(new Error(message))
      })
    },
    end: () => {
      quiet.stop()
      worker.terminate()
      return Promise.resolve()
    },
  }
}
