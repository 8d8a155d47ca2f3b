/** A ranking worker of Node. */
import { Worker } from 'node:worker_threads'
import type { OrderWorker } from '../measure/order-pool.ts'
import type { FromOrderWorker } from '../measure/order-service.ts'

/** Threads do not inherit the loader that reads TypeScript, so each begins by registering it. */
const start = `import(${JSON.stringify(import.meta.resolve('tsx/esm/api'))}).then(({ register }) => {
  register()
  return import(${JSON.stringify(new URL('./order-thread.ts', import.meta.url).href)})
})`

export function nodeOrderWorker(): OrderWorker {
  const worker = new Worker(start, { eval: true })
  return {
    send: (message) => {
      worker.postMessage(message)
    },
    onMessage: (listen) => {
      worker.on('message', (message: FromOrderWorker) => {
        listen(message)
      })
    },
    onError: (listen) => {
      worker.on('error', listen)
    },
    end: () => worker.terminate(),
  }
}
