/** A ranking worker of a browser. */
import type { OrderWorker } from '../measure/order-pool.ts'
import type { FromOrderWorker } from '../measure/order-service.ts'
import { startWorker } from './start-worker.ts'

export function browserOrderWorker(): OrderWorker {
  const worker = startWorker('orders')
  return {
    send: (message) => {
      worker.postMessage(message)
    },
    onMessage: (listen) => {
      worker.addEventListener('message', ({ data }: MessageEvent<FromOrderWorker>) => {
        listen(data)
      })
    },
    onError: (listen) => {
      worker.addEventListener('error', ({ message }) => {
        listen(new Error(message))
      })
    },
    end: () => {
      worker.terminate()
      return Promise.resolve()
    },
  }
}
