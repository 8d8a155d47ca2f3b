/**
 * A subject of the fuzz: where something comes in from outside, how cases of it are drawn, and what must hold for each.
 * Every case besides must end within a second, say nothing on the console and leave what objects inherit alone.
 */
import fc from 'fast-check'
import { prototypesAreUntouched } from './prototypes.ts'

export interface Tried {
  /** cases that really ran to their end, those of shrinking not counted */
  readonly cases: number
  /** ms of the slowest of them */
  readonly worst: number
  /** the smallest case that fails, why, and where it stands in the draw; null where all hold */
  readonly failure: { readonly why: string; readonly given: string; readonly path: string } | null
}

interface Trying {
  readonly cases: number
  readonly seed: number
  /** goes on where a counterexample was found */
  readonly path?: string
  /** told the number of each case before it runs */
  readonly tell?: (number: number) => void
}

export interface Subject {
  readonly name: string
  /** cases in `npm test` */
  readonly cases: number
  readonly tryCases: (how: Trying) => Promise<Tried>
}

/** ms a case may take. */
const longest = 1000

/** A subject; `check` throws, or gives what is wrong, where a case does not hold. */
export function subject<Case>(
  name: string,
  cases: number,
  any: fc.Arbitrary<Case>,
  check: (given: Case) => void | Promise<void>,
): Subject {
  const tryCases = async ({ cases: numRuns, seed, path, tell = () => undefined }: Trying): Promise<Tried> => {
    let begun = 0
    let held = 0
    let worst = 0
    const property = fc.asyncProperty(any, async (given) => {
      tell(begun++)
      const took = await timed(() => quietly(() => check(given)))
      prototypesAreUntouched()
      worst = Math.max(worst, took)
      held++
    })
    const found = await fc.check(property, { numRuns, seed, ...(path === undefined ? {} : { path }) })
    const { failed, counterexample, counterexamplePath, errorInstance } = found
    if (!failed) return { cases: held, worst, failure: null }
    const why = errorInstance instanceof Error ? (errorInstance.stack ?? errorInstance.message) : String(errorInstance)
    const given = fc.stringify(counterexample?.[0])
    return { cases: held, worst, failure: { why, given, path: counterexamplePath ?? '0' } }
  }
  return { name, cases, tryCases }
}

/** ms; a case that was slow is tried twice more, since a busy machine may have been elsewhere. Throws when it stays slow. */
async function timed(work: () => Promise<void>): Promise<number> {
  let took = Infinity
  for (let go = 0; go < 3 && took > longest; go++) {
    const start = performance.now()
    await work()
    took = Math.min(took, performance.now() - start)
  }
  if (took > longest) throw new Error(`The case took ${Math.round(took)} ms; allowed are ${longest}.`)
  return took
}

const ways = ['debug', 'log', 'info', 'warn', 'error'] as const

/** Throws when the work says anything on the console. */
async function quietly(work: () => void | Promise<void>): Promise<void> {
  const own = { ...console }
  const said: string[] = []
  for (const way of ways) console[way] = (...words: unknown[]) => said.push(words.map(String).join(' '))
  try {
    await work()
  } finally {
    Object.assign(console, own)
  }
  if (said.length > 0) throw new Error(`Said on the console: ${said.join('; ').slice(0, 300)}`)
}
