import { describe, expect, it, vi } from 'vitest'
import { aimOf } from '../../src/measure/order-service.ts'
import { study } from '../../src/measure/study.ts'
import { rankOrders } from '../../src/press/orders.ts'
import type { RankingPorts } from '../../src/session/ranking.ts'
import { Ranking } from '../../src/session/ranking.ts'
import { checkSetUp } from '../press/legal-setups.ts'
import { workersHere } from './workers-here.ts'

const four = checkSetUp([12, 10, 16, 14])
const seven = checkSetUp([16, 15, 14, 13, 12, 11, 10])

/** Studies made at once, though not before the caller has gone on. */
const studyHere = ((asked: Parameters<typeof study>[0], told: { done: (found: unknown) => void }) => {
  let called = true
  queueMicrotask(() => {
    const steps = study(asked)
    let step = steps.next()
    while (!step.done) step = steps.next()
    if (called) told.done(step.value)
  })
  return () => (called = false)
}) as unknown as RankingPorts['startStudy']

function rankingHere() {
  const workers = workersHere()
  return { ranking: new Ranking({ spawn: workers.spawn, startStudy: studyHere }), ...workers }
}

const finished = (ranking: Ranking) => vi.waitFor(() => expect(ranking.state.running).toBeNull(), { timeout: 20_000 })

function namesOfBest(ranking: Ranking, inks: typeof four.inks): string[] {
  const { list } = ranking.state
  if (!list) return []
  const { best } = list.weigh(ranking.weights)
  return list.order(best[0]).map((place) => inks[place].name)
}

describe('the ranking of a session', () => {
  it('finds every order and stops its workers', async () => {
    const { ranking, alive } = rankingHere()
    ranking.start(four, 2)
    expect(ranking.state.running).toBe('ranking')
    await finished(ranking)
    expect(ranking.complete).toBe(true)
    expect(alive()).toBe(0)
    const [best] = rankOrders(four, aimOf(ranking.taskFor(four))).ranked
    expect(namesOfBest(ranking, four.inks)).toEqual(best.order.map((place) => four.inks[place].name))
  })

  it('gives seven inks a bounded answer first, and says what no order can pass', async () => {
    const { ranking, alive } = rankingHere()
    ranking.start(seven, 1)
    expect(ranking.state.running).toBe('searching')
    await vi.waitFor(() => expect(ranking.state.running).toBe('ranking'), { timeout: 20_000 })
    const { list, mostPossible, done } = ranking.state
    expect(done).toBe(0)
    expect(list?.count).toBeGreaterThan(0)
    const { best, scores } = list?.weigh(ranking.weights) ?? { best: [0], scores: [NaN] }
    expect(mostPossible).toBeGreaterThanOrEqual(scores[best[0]])
    expect(ranking.complete).toBe(false)
    ranking.cancel()
    expect(ranking.state.running).toBeNull()
    await vi.waitFor(() => expect(alive()).toBe(0))
  })

  it('keeps what it found when it is cancelled, and nothing more comes', async () => {
    const { ranking, alive } = rankingHere()
    ranking.start(four, 1)
    await vi.waitFor(() => expect(ranking.state.done).toBeGreaterThan(0))
    ranking.cancel()
    const { done } = ranking.state
    await vi.waitFor(() => expect(alive()).toBe(0))
    await new Promise((resolve) => setTimeout(resolve, 50))
    expect(ranking.state.done).toBe(done)
    expect(ranking.state.list?.count).toBe(done)
  })

  it('takes the page’s own time where no worker starts', async () => {
    const spawn = () => {
      throw new Error('no worker in a page opened from a file')
    }
    const ranking = new Ranking({ spawn, startStudy: studyHere })
    ranking.start(four, 2)
    await finished(ranking)
    expect(ranking.state.list?.count).toBe(24)
    const { ranking: other } = rankingHere()
    other.start(four, 2)
    await finished(other)
    expect(namesOfBest(ranking, four.inks)).toEqual(namesOfBest(other, four.inks))
  })

  it('holds for the same inks in another order, and for nothing else', async () => {
    const { ranking } = rankingHere()
    expect(ranking.holdsFor(four)).toBe(false)
    ranking.start(four, 1)
    await finished(ranking)
    expect(ranking.holdsFor({ ...four, inks: four.inks.toReversed(), reading: 'first' })).toBe(true)
    expect(ranking.holdsFor({ ...four, press: { ...four.press, speed: four.press.speed + 1 } })).toBe(false)
    expect(ranking.holdsFor(checkSetUp([12, 10, 16, 13]))).toBe(false)
  })

  it('judges by the overprints chosen, by every two inks where none of them is loaded', () => {
    const { ranking } = rankingHere()
    const [first, , third] = four.inks.map(({ name }) => name)
    ranking.overprints = [
      [first, third],
      [first, 'an ink that is not loaded'],
    ]
    expect(ranking.taskFor(four).overprints).toEqual([[0, 2]])
    ranking.overprints = [['an ink', 'another ink']]
    expect(ranking.taskFor(four).overprints).toHaveLength(6)
  })
})
