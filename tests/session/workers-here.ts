/** Ranking workers that run in this thread, each message on its own; and how many of them have not been ended. */
import type { OrderWorker } from '../../src/measure/order-pool.ts'
import type { FromOrderWorker, ToOrderWorker } from '../../src/measure/order-service.ts'
import { orderService } from '../../src/measure/order-service.ts'

export function workersHere() {
  let alive = 0
  const spawn = (): OrderWorker => {
    alive++
    let listen: (message: FromOrderWorker) => void = () => undefined
    const serve = orderService((message) => queueMicrotask(() => listen(message)))
    return {
      send: (message: ToOrderWorker) => void setTimeout(() => serve(message)),
      onMessage: (listener) => (listen = listener),
      onError: () => undefined,
      end: () => Promise.resolve(alive--),
    }
  }
  return { spawn, alive: () => alive }
}
