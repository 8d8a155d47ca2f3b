/**
 * The ranking of a session: what orders are judged by, the orders found so far, and how far the work is. Seven and eight
 * inks get a bounded answer first, then all orders; a worker for each core does it, or slices of the page's own time.
 */
import type { OrderWorker } from '../measure/order-pool.ts'
import { rankInWorkers } from '../measure/order-pool.ts'
import type { RankingTask } from '../measure/order-service.ts'
import { aimOf } from '../measure/order-service.ts'
import { orderPath } from '../press/order-path.ts'
import type { OrderWeights } from '../press/order-score.ts'
import { allPairs, usualWeights } from '../press/order-score.ts'
import { factorial, ordersBelow } from '../press/orders.ts'
import type { SetUp } from '../press/setup.ts'
import { browserOrderWorker } from './browser-order-worker.ts'
import { OrderList } from './order-list.ts'
import type { Session } from './session.ts'
import { startStudy } from './studying.ts'

/** Inks from which on a bounded answer comes first: fewer are ranked in about a second. */
const inksForSearch = 7

export interface RankingState {
  /** what was asked; null before anything was */
  readonly task: RankingTask | null
  readonly list: OrderList | null
  /** orders done, of all */
  readonly done: number
  readonly all: number
  readonly running: 'searching' | 'ranking' | null
  /** no order scores above this: from the bounded answer, by the weights of its time; null without one */
  readonly mostPossible: number | null
}

const nothingRanked: RankingState = { task: null, list: null, done: 0, all: 0, running: null, mostPossible: null }

export interface RankingPorts {
  spawn: () => OrderWorker
  startStudy: typeof startStudy
}

export class Ranking {
  /** weights of the score; they act on orders already found as well */
  weights: OrderWeights = usualWeights
  /** sets of inks by name whose trap counts; null for every two inks */
  overprints: readonly (readonly string[])[] | null = null
  #state = nothingRanked
  #cancel: (() => void) | undefined
  readonly #ports: RankingPorts
  readonly #listeners = new Set<() => void>()

  constructor(ports: RankingPorts = { spawn: browserOrderWorker, startStudy }) {
    this.#ports = ports
  }

  get state(): RankingState {
    return this.#state
  }

  /** Whether the orders found are those of this set-up, whatever order it is in now. */
  holdsFor(setUp: SetUp): boolean {
    const { task } = this.#state
    return task !== null && orderless(task.setUp) === orderless(setUp)
  }

  get complete(): boolean {
    const { done, all } = this.#state
    return all > 0 && done === all
  }

  weighBy(weights: OrderWeights): void {
    this.weights = weights
    this.#set({})
  }

  /** The task for this set-up, judged as chosen; overprints with inks that are not loaded are left out. */
  taskFor(setUp: SetUp): RankingTask {
    const names = setUp.inks.map(({ name }) => name)
    const chosen = this.overprints
      ?.map((inks) => inks.map((name) => names.indexOf(name)))
      .filter((places) => !places.includes(-1))
    return { setUp, overprints: chosen?.length ? chosen : allPairs(names.length), weights: this.weights }
  }

  /** Ranks every order of the set-up's inks; an earlier ranking is called off. `workers`: at least 1. */
  start(setUp: SetUp, workers: number): void {
    this.cancel()
    const task = this.taskFor(setUp)
    const inks = setUp.inks.length
    const list = new OrderList(inks)
    this.#set({ ...nothingRanked, task, list, all: factorial(inks) })
    if (inks < inksForSearch) {
      this.#rankAll(task, list, workers)
      return
    }
    this.#set({ running: 'searching' })
    this.#cancel = this.#ports.startStudy<'search'>(
      { kind: 'search', task },
      {
        step: () => undefined,
        done: ({ found, mostPossible }) => {
          found.forEach((each) => list.add(each))
          this.#set({ mostPossible })
          this.#rankAll(task, list, workers)
        },
      },
    )
  }

  /** Stops the work; what has been found stays. */
  cancel(): void {
    this.#cancel?.()
    this.#cancel = undefined
    if (this.#state.running) this.#set({ running: null })
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  #rankAll(task: RankingTask, list: OrderList, workers: number): void {
    const control = new AbortController()
    this.#cancel = () => control.abort()
    this.#set({ running: 'ranking' })
    const ended = () => {
      if (!control.signal.aborted) this.#set({ running: null })
    }
    rankInWorkers(task, {
      spawn: this.#ports.spawn,
      workers,
      signal: control.signal,
      onBatch: (batch, done) => {
        list.addBatch(batch)
        this.#set({ done })
      },
    }).then(ended, () => {
      // A page opened from a file gets no worker; then the page's own time is taken.
      if (!control.signal.aborted) this.#rankInSlices(task, list, control.signal, ended)
    })
  }

  #rankInSlices(task: RankingTask, list: OrderList, signal: AbortSignal, ended: () => void): void {
    const orders = ordersBelow(orderPath(task.setUp), [], aimOf(task))
    let done = 0
    const work = () => {
      if (signal.aborted) return
      const until = performance.now() + slice.work
      while (performance.now() < until) {
        const next = orders.next()
        if (next.done) {
          this.#set({ done })
          ended()
          return
        }
        list.add(next.value)
        done++
      }
      this.#set({ done })
      setTimeout(work, slice.pause)
    }
    work()
  }

  #set(part: Partial<RankingState>): void {
    this.#state = { ...this.#state, ...part }
    for (const listener of this.#listeners) listener()
  }
}

/** ms of work at a time, and between two such times. */
const slice = { work: 12, pause: 4 }

/** A set-up's inks, paper and press as a text, the same in whatever order the inks stand. */
function orderless({ inks, paper, press }: SetUp): string {
  const byName = inks.toSorted((a, b) => (a.name < b.name ? -1 : 1)).map((ink) => Object.entries(ink).sort())
  return JSON.stringify([byName, Object.entries(paper).sort(), Object.entries(press).sort()])
}

const rankings = new WeakMap<Session, Ranking>()

/** The one ranking of this session. */
export function rankingOf(session: Session): Ranking {
  let ranking = rankings.get(session)
  if (!ranking) rankings.set(session, (ranking = new Ranking()))
  return ranking
}
