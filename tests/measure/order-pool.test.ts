import { describe, expect, it, vi } from 'vitest'
import { nodeOrderWorker } from '../../src/command/node-order-worker.ts'
import type { OrderWorker } from '../../src/measure/order-pool.ts'
import { rankInWorkers } from '../../src/measure/order-pool.ts'
import type { FromOrderWorker, RankingTask, ToOrderWorker } from '../../src/measure/order-service.ts'
import { aimOf, orderService } from '../../src/measure/order-service.ts'
import { ordersIn, rankedIn } from '../../src/press/order-batch.ts'
import { allPairs, usualWeights } from '../../src/press/order-score.ts'
import type { RankedOrder } from '../../src/press/orders.ts'
import { bestFirst, rankOrders, unitsToSolve } from '../../src/press/orders.ts'
import { checkSetUp } from '../press/legal-setups.ts'

const setUp = checkSetUp([12, 10, 16, 14])
const task: RankingTask = { setUp, overprints: allPairs(4), weights: usualWeights }

/** Ranks in workers and keeps everything that comes back. */
async function collect(spawn: () => OrderWorker, workers: number, signal?: AbortSignal) {
  const ranked: RankedOrder[] = []
  const progress: number[] = []
  const { solved } = await rankInWorkers(task, {
    spawn,
    workers,
    ...(signal ? { signal } : {}),
    onBatch: (batch, done) => {
      progress.push(done)
      for (let index = 0; index < ordersIn(batch); index++) ranked.push(rankedIn(batch, index))
    },
  })
  return { ranked: ranked.sort(bestFirst), solved, progress }
}

/** Workers that run in this thread, each message on its own; and how many of them have not been ended. */
function workersHere() {
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

describe('a ranking in workers', () => {
  it('comes to the same orders, scores and terms as one made in one go', async () => {
    const { ranked, solved, progress } = await collect(workersHere().spawn, 2)
    expect(ranked).toEqual(rankOrders(setUp, aimOf(task)).ranked)
    expect(progress.at(-1)).toBe(24)
    // Each worker settles the first unit again only where its beginnings do not follow on each other.
    expect(solved).toBeGreaterThanOrEqual(unitsToSolve(4))
    expect(solved).toBeLessThanOrEqual(unitsToSolve(4) + 8)
  })

  it('does so in threads of Node, which are gone afterwards', { timeout: 60_000 }, async () => {
    const ended = vi.fn()
    const spawn = () => {
      const worker = nodeOrderWorker()
      return { ...worker, end: () => worker.end().then(ended) }
    }
    const { ranked } = await collect(spawn, 2)
    expect(ranked).toEqual(rankOrders(setUp, aimOf(task)).ranked)
    expect(ended).toHaveBeenCalledTimes(2)
  })

  it('leaves no worker behind when cancelled', async () => {
    const { spawn, alive } = workersHere()
    const cancel = new AbortController()
    const ranking = collect(spawn, 2, cancel.signal)
    expect(alive()).toBe(2)
    setTimeout(() => {
      cancel.abort(new Error('no more'))
    }, 1)
    await expect(ranking).rejects.toThrow('no more')
    expect(alive()).toBe(0)
    await expect(collect(spawn, 2, cancel.signal)).rejects.toThrow('no more')
    expect(alive()).toBe(0)
  })

  it('leaves no thread behind when cancelled in the middle of eight inks', { timeout: 60_000 }, async () => {
    const eight = {
      ...setUp,
      inks: [16, 14, 12, 10, 9, 8, 13, 11].map((tack, place) => ({ ...setUp.inks[0], name: `ink ${place}`, tack })),
    }
    const cancel = new AbortController()
    const codes: unknown[] = []
    const ranking = rankInWorkers(
      { setUp: eight, overprints: allPairs(8), weights: usualWeights, aim: null },
      {
        spawn: () => {
          const worker = nodeOrderWorker()
          return { ...worker, end: () => worker.end().then((code) => codes.push(code)) }
        },
        workers: 2,
        signal: cancel.signal,
        onBatch: () => cancel.abort(new Error('seen enough')),
      },
    )
    await expect(ranking).rejects.toThrow('seen enough')
    // A thread that is told to end in the middle of its work ends with code 1.
    expect(codes).toEqual([1, 1])
  })

  it('fails with a worker, and ends the others', async () => {
    const { spawn, alive } = workersHere()
    const failing = () => ({
      ...spawn(),
      onError: (listen: (error: Error) => void) => queueMicrotask(() => listen(new Error('broken'))),
    })
    await expect(collect(failing, 3)).rejects.toThrow('broken')
    expect(alive()).toBe(0)
  })
})

describe('a listener that fails', () => {
  it('fails the ranking, and no worker is left', async () => {
    const { spawn, alive } = workersHere()
    const onBatch = () => {
      throw new Error('no room')
    }
    await expect(rankInWorkers(task, { spawn, workers: 2, onBatch })).rejects.toThrow('no room')
    expect(alive()).toBe(0)
  })
})
