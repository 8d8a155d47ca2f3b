/** A thread that ranks orders for the command line. */
import { parentPort } from 'node:worker_threads'
import type { ToOrderWorker } from '../measure/order-service.ts'
import { orderService } from '../measure/order-service.ts'

const serve = orderService((message, transfer) => parentPort?.postMessage(message, transfer))

parentPort?.on('message', (message: ToOrderWorker) => {
  serve(message)
})
