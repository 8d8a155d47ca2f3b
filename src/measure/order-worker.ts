/** Entry of a worker that ranks orders, in a browser; see order-service.ts. */
import type { ToOrderWorker } from './order-service.ts'
import { orderService } from './order-service.ts'

const serve = orderService((message, transfer) => {
  postMessage(message, { transfer })
})

addEventListener('message', ({ data }: MessageEvent<ToOrderWorker>) => {
  serve(data)
})
