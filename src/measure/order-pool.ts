/**
 * A ranking spread over workers: beginnings of two inks are handed out one at a time, results come back as they are
 * found, and no worker outlives the ranking, be it finished, failed or cancelled.
 */
import type { OrderBatch } from '../press/order-batch.ts'
import { ordersIn } from '../press/order-batch.ts'
import { beginnings, factorial } from '../press/orders.ts'
import type { FromOrderWorker, RankingTask, ToOrderWorker } from './order-service.ts'

/** A worker, whatever it runs on. */
export interface OrderWorker {
  send: (message: ToOrderWorker) => void
  onMessage: (listen: (message: FromOrderWorker) => void) => void
  onError: (listen: (error: Error) => void) => void
  /** settles once it is gone */
  end: () => Promise<unknown>
}

export interface PoolOptions {
  spawn: () => OrderWorker
  /** how many workers, at least 1; usually the processor's cores */
  workers: number
  /** results as they come, with how many of all orders are done */
  onBatch: (batch: OrderBatch, done: number, all: number) => void
  signal?: AbortSignal
}

/** Inks in each beginning handed out: 56 shares of work for eight inks. */
const handedOut = 2

/** Ranks every order; returns how many units were settled. Throws the signal's reason when cancelled. */
export async function rankInWorkers(task: RankingTask, options: PoolOptions): Promise<{ solved: number }> {
  const { spawn, onBatch, signal } = options
  signal?.throwIfAborted()
  const inks = task.setUp.inks.length
  const waiting = beginnings(inks, Math.min(handedOut, inks - 1))
  const all = factorial(inks)
  const workers: OrderWorker[] = []
  let done = 0
  let solved = 0
  try {
    await new Promise<void>((resolve, reject) => {
      let busy = 0
      signal?.addEventListener('abort', () => {
        reject(signal.reason as Error)
      })
      const hand = (worker: OrderWorker) => {
        const beginning = waiting.shift()
        if (beginning) {
          busy++
          worker.send({ kind: 'rank', beginning })
        } else if (busy === 0) resolve()
      }
      for (let count = Math.min(options.workers, waiting.length); count > 0; count--) {
        const worker = spawn()
        workers.push(worker)
        worker.onError(reject)
        worker.onMessage((message) => {
          if (signal?.aborted) return
          if (message.kind === 'batch') {
            done += ordersIn(message.batch)
            try {
              onBatch(message.batch, done, all)
            } catch (error) {
              reject(error instanceof Error ? error : new Error(String(error)))
            }
            return
          }
          solved += message.solved
          busy--
          hand(worker)
        })
        worker.send({ kind: 'task', task })
        hand(worker)
      }
    })
  } finally {
    await Promise.all(workers.map((worker) => worker.end()))
  }
  return { solved }
}
