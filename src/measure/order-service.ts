/**
 * What a worker does for a ranking: told the set-up once, then one beginning after another, it sends back every order
 * with that beginning, a batch at a time. The same for a browser's workers and Node's threads.
 */
import type { OrderBatch } from '../press/order-batch.ts'
import { batchOf } from '../press/order-batch.ts'
import type { OrderPath } from '../press/order-path.ts'
import { orderPath } from '../press/order-path.ts'
import type { OrderAim, OrderWeights } from '../press/order-score.ts'
import type { RankedOrder } from '../press/orders.ts'
import { ordersBelow } from '../press/orders.ts'
import type { SetUp } from '../press/setup.ts'
import { colourJudge } from './order-colours.ts'

/** What is to be ranked; plain data, so that it can be sent. */
export interface RankingTask {
  setUp: SetUp
  /** sets of two or more inks, by their places in the set-up */
  overprints: number[][]
  weights: OrderWeights
  /** name of the published colours; the paper's usual ones where it is left out, none at all where it is null */
  aim?: string | null
}

export type ToOrderWorker = { kind: 'task'; task: RankingTask } | { kind: 'rank'; beginning: number[] }

export type FromOrderWorker =
  | { kind: 'batch'; batch: OrderBatch }
  /** the beginning is done; units settled for it */
  | { kind: 'done'; solved: number }

/** Orders sent at once. */
const batchSize = 500

/** What the task judges by. */
export function aimOf({ setUp, overprints, weights, aim }: RankingTask): OrderAim {
  const judgeColour = aim === null ? undefined : colourJudge(setUp, aim)
  return { overprints, weights, ...(judgeColour ? { judgeColour } : {}) }
}

/** Answers messages by `send`; returns the function to hand each message to. */
export function orderService(
  send: (message: FromOrderWorker, transfer: ArrayBuffer[]) => void,
): (message: ToOrderWorker) => void {
  let path: OrderPath | undefined
  let aim: OrderAim | undefined
  return (message) => {
    if (message.kind === 'task') {
      path = orderPath(message.task.setUp)
      aim = aimOf(message.task)
      return
    }
    if (!path || !aim) throw new Error('A worker was told to rank before it was told what.')
    const before = path.solved
    let ranked: RankedOrder[] = []
    const sendBatch = () => {
      const batch = batchOf(ranked)
      ranked = []
      send({ kind: 'batch', batch }, [batch.orders.buffer, batch.values.buffer])
    }
    for (const each of ordersBelow(path, message.beginning, aim)) {
      ranked.push(each)
      if (ranked.length === batchSize) sendBatch()
    }
    if (ranked.length > 0) sendBatch()
    send({ kind: 'done', solved: path.solved - before }, [])
  }
}
