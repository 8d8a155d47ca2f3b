/** Reads a ranking task from the outside: a set-up that may also say what its orders are judged by. */
import * as v from 'valibot'
import { publishedAims } from '../colour/data/published-aims.ts'
import type { Problem } from '../press/problem.ts'
import { problem } from '../press/problem.ts'
import { checkSetUp } from '../press/check-setup.ts'
import { allPairs, termNames, usualWeights } from '../press/order-score.ts'
import type { SetUp } from '../press/setup.ts'
import type { RankingTask } from './order-service.ts'

const aimNames = publishedAims.map(({ name }) => name)
const mostWeight = 1_000_000
const aimValues = { allowed: aimNames.join(', ') }
const weightValues = { most: mostWeight, allowed: termNames.join(', ') }

const colours = v.nullable(v.picklist(aimNames))
const aimSchema = v.union([
  colours,
  v.strictObject({
    colours: v.exactOptional(colours),
    overprints: v.exactOptional(
      v.pipe(v.array(v.pipe(v.array(v.string()), v.minLength(2))), v.minLength(1), v.maxLength(256)),
    ),
  }),
])
const weight = v.exactOptional(v.pipe(v.number(), v.minValue(0), v.maxValue(mostWeight)))
const weightsSchema = v.strictObject({ trap: weight, contamination: weight, picking: weight, colour: weight })

/** Checks `input`, a set-up with or without `aim` and `weights`. Never throws. */
export function checkRanking(input: unknown): { task: RankingTask } | { problems: Problem[] } {
  const isObject = typeof input === 'object' && input !== null && !Array.isArray(input)
  const { aim, weights, ...rest } = isObject ? (input as Record<string, unknown>) : {}
  const checked = checkSetUp(isObject ? rest : input)
  const goal = v.safeParse(v.optional(aimSchema), aim)
  const weighed = v.safeParse(v.optional(weightsSchema, {}), weights)
  const problems: Problem[] = 'problems' in checked ? [...checked.problems] : []
  if (!goal.success) problems.push(problem('aim', 'problem.ranking.aim', aimValues))
  if (!weighed.success) {
    problems.push(problem(pathBelow('weights', weighed.issues[0].path), 'problem.ranking.weight', weightValues))
  }
  if ('problems' in checked || !goal.success || !weighed.success) return { problems }

  const { setUp } = checked
  const wanted = goal.output
  const named = typeof wanted === 'object' && wanted !== null ? wanted : { colours: wanted }
  const overprints = 'overprints' in named ? placesOf(named.overprints, setUp, problems) : undefined
  if (problems.length > 0) return { problems }
  return {
    task: {
      setUp,
      overprints: overprints ?? allPairs(setUp.inks.length),
      weights: { ...usualWeights, ...weighed.output },
      ...(named.colours === undefined ? {} : { aim: named.colours }),
    },
  }
}

function pathBelow(whole: string, path: readonly { key: unknown }[] | undefined): string {
  const key = path?.[0]?.key
  return typeof key === 'string' ? `${whole}.${key}` : whole
}

/** The places of the inks named; whatever is wrong goes to `problems`. */
function placesOf(overprints: readonly string[][], { inks }: SetUp, problems: Problem[]): number[][] {
  const names = inks.map((ink) => ink.name)
  return overprints.map((overprint, index) => {
    const places = overprint.map((name) => names.indexOf(name))
    const path = `aim.overprints[${index}]`
    if (places.includes(-1)) {
      problems.push(problem(path, 'problem.ranking.notLoaded', { allowed: names.join(', ') }))
    } else if (new Set(places).size < places.length) {
      problems.push(problem(path, 'problem.ranking.twice'))
    }
    return places
  })
}
