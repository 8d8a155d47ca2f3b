/** A ranking worker of a browser. The address is written so that the bundler finds the worker's module. */
import type { OrderWorker } from './order-pool.ts'
import type { FromOrderWorker } from './order-service.ts'

export function browserOrderWorker(): OrderWorker {
  const worker = new Worker(new URL('./order-worker.ts', import.meta.url), { type: 'module' })
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
