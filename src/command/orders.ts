/**
 * `npm run --silent orders -- setup.json`: every order of the inks, best first, one JSON object a line. `--best 10`
 * prints only the first ten; `--quick` answers at once with orders found by a bounded search, and says so in each line.
 */
import { availableParallelism } from 'node:os'
import { parseArgs } from 'node:util'
import { checkRanking } from '../measure/check-ranking.ts'
import { rankInWorkers } from '../measure/order-pool.ts'
import type { RankingTask } from '../measure/order-service.ts'
import { aimOf } from '../measure/order-service.ts'
import { ordersIn, rankedIn } from '../press/order-batch.ts'
import { searchOrders } from '../press/order-search.ts'
import type { RankedOrder } from '../press/orders.ts'
import { bestFirst, rankOrders } from '../press/orders.ts'
import type { Command, Streams } from './command.ts'
import { nodeOrderWorker } from './node-order-worker.ts'
import { InputProblem, parseJson, readInput } from './read-input.ts'

/** Inks from which on a ranking is spread over threads: below, starting them takes longer than ranking. */
const inksForThreads = 7

export const orders: Command = {
  usage: 'orders: give the file of one set-up, or - for standard input; --best N prints N lines, --quick searches only',
  work: async (args, { input, out }) => {
    const { file, best, quick } = wanted(args)
    const task = readTask(file, input)
    if (quick) {
      const { found, exact, mostPossible } = searchOrders(task.setUp, aimOf(task))
      const bound = exact ? {} : { bounded: true, mostPossible }
      print(out, task, distinct(found).slice(0, best), bound)
    } else print(out, task, (await rank(task)).slice(0, best))
    return 0
  },
}

function wanted(args: string[]): { file: string; best: number; quick: boolean } {
  try {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: { best: { type: 'string', default: '40320' }, quick: { type: 'boolean', default: false } },
    })
    const best = Number(values.best)
    if (!Number.isInteger(best) || best < 1)
      throw new InputProblem(`--best: ${values.best} is no number of lines; allowed are whole numbers from 1`)
    if (positionals.length !== 1) throw new InputProblem('orders: give one file, or - for standard input')
    return { file: positionals[0], best, quick: values.quick }
  } catch (error) {
    if (error instanceof InputProblem) throw error
    throw new InputProblem(`orders: ${error instanceof Error ? error.message : String(error)}`)
  }
}

function readTask(file: string, input: Streams['input']): RankingTask {
  const checked = checkRanking(parseJson(file, readInput(file, input)))
  if ('task' in checked) return checked.task
  throw new InputProblem(checked.problems.map(({ path, message }) => `${path || 'set-up'}: ${message}`).join('\n'))
}

async function rank(task: RankingTask): Promise<RankedOrder[]> {
  if (task.setUp.inks.length < inksForThreads) return rankOrders(task.setUp, aimOf(task)).ranked
  const ranked: RankedOrder[] = []
  await rankInWorkers(task, {
    spawn: nodeOrderWorker,
    workers: availableParallelism(),
    onBatch: (batch) => {
      for (let index = 0; index < ordersIn(batch); index++) ranked.push(rankedIn(batch, index))
    },
  })
  return ranked.sort(bestFirst)
}

/** The search comes upon some orders twice. */
function distinct(found: readonly RankedOrder[]): RankedOrder[] {
  return [...new Map(found.map((each) => [each.order.join(), each])).values()]
}

function print(out: Streams['out'], { setUp }: RankingTask, ranked: readonly RankedOrder[], bound: object = {}): void {
  for (const { order, score, terms } of ranked) {
    const { colour, ...shares } = terms
    const names = order.map((ink) => setUp.inks[ink].name)
    // JSON has no word for no number: null says that no printed colour has an aim.
    out(JSON.stringify({ order: names, score, terms: { ...shares, dE00: colour }, ...bound }))
  }
}
