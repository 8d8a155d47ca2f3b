import { expect, it } from 'vitest'
import type { Fit } from '../../src/measure/fit.ts'
import type { FitProgress } from '../../src/measure/fit-search.ts'
import { isRefused } from '../../src/measure/said.ts'
import type { Refused } from '../../src/measure/said.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { startFitting } from '../../src/session/fitting.ts'
import { scenarios } from '../../src/session/scenarios.ts'
import { sheetOfMadeUpPress } from '../measure/made-up-press.ts'

/** Four inks whose films differ from what the fit sets out from. */
function task() {
  const checked = checkSetUp(scenarios.descending)
  if ('problems' in checked) throw new Error(checked.problems[0].message)
  const { setUp } = checked
  const parameters = setUp.inks.map((_, unit) => ({ kind: 'film', unit }) as const)
  const truth = [3.4, 4.3, 3.8, 4.6]
  const sheet = sheetOfMadeUpPress({ setUp, parameters, truth, status: 'E', noise: 0, seed: 1 })
  return { truth, task: { setUp, sheet, status: 'E', parameters } as const }
}

// Node has no worker of the browser's kind, so this is the way by steps.
it('fits step by step where there is no worker, and gives the page its turn between steps', async () => {
  const { truth, task: given } = task()
  const steps: FitProgress[] = []
  let turns = 0
  const count = setInterval(() => (turns += 1))
  const result = await new Promise<Fit | Refused>((done) => {
    startFitting(given, { step: (progress) => steps.push(progress), done })
  })
  clearInterval(count)
  if (isRefused(result)) throw new Error(result.refused.message)
  result.values.forEach(({ value }, unit) => {
    expect(value).toBeCloseTo(truth[unit], 3)
  })
  expect(steps.map(({ step }) => step)).toEqual(steps.map((_, at) => at + 1))
  expect(turns).toBeGreaterThan(steps.length / 2)
})

it('tells nothing more once it is called off', async () => {
  const { task: given } = task()
  let told = 0
  const cancel = startFitting(given, { step: () => (told += 1), done: () => (told += 1) })
  cancel()
  await new Promise((resolve) => setTimeout(resolve, 60))
  expect(told).toBe(0)
})

it('hands on a refusal as it is', async () => {
  const { task: given } = task()
  const result = await new Promise<Fit | Refused>((done) => {
    startFitting({ ...given, parameters: [] }, { step: () => undefined, done })
  })
  expect(result).toEqual({ refused: { message: 'fit.nothingToFit' } })
})
