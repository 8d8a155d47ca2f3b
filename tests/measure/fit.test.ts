import { describe, expect, it } from 'vitest'
import type { Fit, FitTask } from '../../src/measure/fit.ts'
import { fitPress } from '../../src/measure/fit.ts'
import type { FitProgress } from '../../src/measure/fit-search.ts'
import type { FitParameter } from '../../src/measure/fit-parameter.ts'
import { fitParameters, usualParameters, valueIn, withParameters } from '../../src/measure/fit-parameter.ts'
import type { Refused } from '../../src/measure/said.ts'
import { seededDraws } from '../../src/physics/random.ts'
import { patchOf } from '../../src/press/patches.ts'
import { ranges } from '../../src/press/ranges.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { checkSetUp } from '../press/legal-setups.ts'
import { sheetOfMadeUpPress } from './made-up-press.ts'

const setUp = checkSetUp([16, 14, 12, 10])
const films = setUp.inks.map((_, unit): FitParameter => ({ kind: 'film', unit }))
const press = (kind: 'dampening' | 'evenness' | 'settingGain'): FitParameter => ({ kind, unit: null })
const usual = [...films, press('dampening')]
const truth = [3.6, 4.4, 4.1, 3.8, 0.6]
const madeUp = { setUp, parameters: usual, truth, status: 'T' as const, noise: 0, seed: 1 }

function run(task: FitTask): { result: Fit | Refused; progress: FitProgress[] } {
  const progress: FitProgress[] = []
  const steps = fitPress(task)
  let next = steps.next()
  for (; !next.done; next = steps.next()) progress.push(next.value)
  return { result: next.value, progress }
}

function fitted(task: FitTask): Fit {
  const { result } = run(task)
  if ('refused' in result) throw new Error(`${result.refused.message} ${JSON.stringify(result.refused.values)}`)
  return result
}

function refusal(task: FitTask): string {
  const { result } = run(task)
  return 'refused' in result ? result.refused.message : 'fitted'
}

const taskFor = (change: Partial<typeof madeUp> & { patches?: number[] }, parameters = usual): FitTask => ({
  setUp,
  sheet: sheetOfMadeUpPress({ ...madeUp, ...change }),
  status: 'T',
  parameters,
})

describe('a sheet printed by a press of known values', () => {
  it.each([
    { name: 'films and dampening', parameters: usual, truth },
    { name: 'films and evenness', parameters: [...films, press('evenness')], truth: [3.6, 4.4, 4.1, 3.8, 5.5] },
    { name: 'films and setting gain', parameters: [...films, press('settingGain')], truth: [4.2, 3.4, 4.1, 4.6, 0.1] },
    {
      name: 'films and the tacks after the first',
      parameters: [...films, ...[1, 2, 3].map((unit): FitParameter => ({ kind: 'tack', unit }))],
      truth: [4, 4, 4, 4, 13, 13.5, 9],
    },
  ])('gives them back exactly from exact readings: $name', ({ parameters, truth }) => {
    const { values } = fitted(taskFor({ parameters, truth }, parameters))
    values.forEach(({ value }, i) => expect(Math.abs(value - truth[i])).toBeLessThan(1e-3))
  })

  it('gives them back from wherever the search sets out: 6 set-ups drawn far from the press', () => {
    const draw = seededDraws(7)
    for (let i = 0; i < 6; i++) {
      const far = withParameters(
        setUp,
        usual,
        usual.map(({ kind }) => (kind === 'film' ? 1.5 + 5 * draw() : 1.9 * draw())),
      )
      const { values } = fitted({ ...taskFor({}), setUp: far })
      values.forEach(({ value }, each) => expect(Math.abs(value - truth[each])).toBeLessThan(1e-3))
    }
  })

  it('gives them back from readings in status E, too', () => {
    const { values } = fitted({ ...taskFor({ status: 'E' as 'T' }), status: 'E' })
    values.forEach(({ value }, i) => expect(Math.abs(value - truth[i])).toBeLessThan(1e-3))
  })

  it('gives them back from readings to 0.01 within what it says it knows: 4 standard errors, in 20 draws of 5 values', () => {
    const misses = Array.from({ length: 20 }, (_, seed) =>
      fitted(taskFor({ noise: 0.01, seed })).values.map(
        ({ value, standardError }, i) => (value - truth[i]) / standardError,
      ),
    ).flat()
    expect(Math.max(...misses.map(Math.abs))).toBeLessThan(4)
    // 100 draws of a standard normal have a root mean square of 1; five standard errors of it are 0.35.
    const rootMeanSquare = Math.sqrt(misses.reduce((sum, miss) => sum + miss ** 2, 0) / misses.length)
    expect(Math.abs(rootMeanSquare - 1)).toBeLessThan(0.35)
  })

  it('states what is left over: residuals that belong to the fitted set-up, and their deviation', () => {
    const fit = fitted(taskFor({ noise: 0.02, seed: 3 }))
    const again = sheetOfMadeUpPress({ ...madeUp, setUp: fit.setUp, parameters: [], truth: [] })
    for (const { patch, filter, computed } of fit.residuals) {
      expect(computed).toBeCloseTo(again.patches.find((each) => each.patch === patch)?.densities[filter] ?? NaN, 12)
    }
    const squares = fit.residuals.reduce((sum, { read, computed }) => sum + (read - computed) ** 2, 0)
    expect(fit.deviation).toBeCloseTo(Math.sqrt(squares / (45 - 5)), 12)
  })

  it('never says a reading is known better than its last digit', () => {
    expect(fitted(taskFor({})).deviation).toBe(0.01)
  })

  it('goes nearer step by step, and stops when asked', () => {
    const { progress } = run(taskFor({ noise: 0.01 }))
    expect(progress.length).toBeGreaterThan(0)
    progress.forEach(({ difference, step, most }, i) => {
      expect(step).toBe(i + 1)
      expect(step).toBeLessThanOrEqual(most)
      if (i > 0) expect(difference).toBeLessThanOrEqual(progress[i - 1].difference)
    })
    const steps = fitPress(taskFor({ noise: 0.01 }))
    expect(steps.next().done).toBe(false)
    expect(steps.return({ refused: { message: 'fit.nothingToFit' } }).done).toBe(true)
    expect(steps.next()).toEqual({ done: true, value: undefined })
  })

  it('leaves the set-up it started from as it was', () => {
    const before = structuredClone(setUp)
    fitted(taskFor({}))
    expect(setUp).toEqual(before)
  })

  it('says how well each value is decided, and what it would take for another', () => {
    const { values, certainty } = fitted(taskFor({ noise: 0.01 }))
    expect(values.slice(0, 4).map(({ decided }) => decided)).toEqual(['well', 'well', 'well', 'well'])
    certainty.correlations.forEach((row, i) => {
      expect(row[i]).toBeCloseTo(1, 9)
      row.forEach((correlation, j) => {
        expect(Math.abs(correlation)).toBeLessThanOrEqual(1 + 1e-9)
        expect(correlation).toBeCloseTo(certainty.correlations[j][i], 9)
      })
    })
    expect(certainty.condition).toBeGreaterThan(1)
    expect(certainty.condition).toBeLessThan(10)
  })

  // A fiftieth of the legal range is well decided, a tenth roughly, a quarter hardly.
  it.each([
    [0.01, 'roughly'],
    [0.06, 'hardly'],
  ])('calls from readings that scatter by %d the films well decided and the dampening %s so', (noise, word) => {
    for (const { kind, decided, standardError } of fitted(taskFor({ noise, seed: 2 })).values) {
      const share = standardError / (ranges[kind].most - ranges[kind].least)
      expect(decided).toBe(share < 0.02 ? 'well' : share < 0.1 ? 'roughly' : 'hardly')
      if (kind === 'dampening') expect(decided).toBe(word)
    }
  })
})

describe('what the data cannot decide is refused', () => {
  it('all tacks at once: only their ratios act on trap', () => {
    const parameters = [...films, ...films.map(({ unit }): FitParameter => ({ kind: 'tack', unit }))]
    const { result } = run(taskFor({}, parameters))
    expect(result).toMatchObject({ refused: { message: 'fit.leftOpen' } })
  })

  it('dampening, evenness and setting gain together, from readings to 0.01', () => {
    expect(refusal(taskFor({ noise: 0.01 }, [...usual, press('evenness'), press('settingGain')]))).toBe('fit.leftOpen')
  })

  it('what moves trap, from solids alone', () => {
    for (const kind of ['dampening', 'evenness', 'settingGain'] as const) {
      expect(refusal(taskFor({ patches: [1, 2, 4, 8] }, [...films, press(kind)]))).toBe('fit.needsOverprints')
    }
    expect(refusal(taskFor({ patches: [1, 2, 4, 8] }, films))).toBe('fitted')
  })

  it('the film of an ink that was not read', () => {
    const { result } = run(taskFor({ patches: [patchOf([1]), patchOf([2]), patchOf([1, 2])] }, films))
    expect(result).toMatchObject({
      refused: {
        message: 'fit.leftOpen',
        values: {
          parameters: ['black', 'yellow'].map((ink) => ({ message: 'fit.parameter.film', values: { ink } })),
        },
      },
    })
  })

  it('more values than readings, no value, readings of other inks, an ink without a colour', () => {
    expect(refusal(taskFor({ patches: [1] }, films))).toBe('fit.tooFewReadings')
    expect(refusal(taskFor({ patches: [] }, films))).toBe('fit.tooFewReadings')
    // As many values as readings leave nothing over to tell how near they come.
    expect(run(taskFor({ patches: [patchOf([0, 1, 2])] }, films.slice(0, 3))).result).toMatchObject({
      refused: { message: 'fit.tooFewReadings', values: { readings: 3, parameters: 3 } },
    })
    expect(refusal(taskFor({}, []))).toBe('fit.nothingToFit')
    const task = taskFor({})
    expect(run({ ...task, sheet: { ...task.sheet, inks: ['cyan', 'black', 'magenta', 'yellow'] } }).result).toEqual({
      refused: { message: 'fit.otherInks', values: { sheet: 'cyan, black, magenta, yellow' } },
    })
    expect(refusal({ ...task, sheet: { ...task.sheet, inks: ['black', 'cyan', 'magenta'] } })).toBe('fit.otherInks')
    const silver: SetUp = { ...setUp, inks: setUp.inks.map((ink, i) => (i === 2 ? { ...ink, name: 'silver' } : ink)) }
    const sheet = { ...task.sheet, inks: silver.inks.map(({ name }) => name) }
    expect(refusal({ ...task, setUp: silver, sheet })).toBe('strip.inkWithoutColour')
  })
})

describe('what the model cannot be is said', () => {
  it('by a deviation, and a caution where readings make no sense together', () => {
    const task = taskFor({})
    const patches = task.sheet.patches.map((each, i) =>
      i % 2 ? { ...each, densities: { red: 0.9, green: 0.9, blue: 0.9 } } : each,
    )
    const { result } = run({ ...task, parameters: films, sheet: { ...task.sheet, patches } })
    if ('refused' in result) expect(result.refused.message).toBe('fit.leftOpen')
    else expect(result.cautions).toContainEqual(expect.objectContaining({ message: 'fit.poor' }))
  })

  it('by a bound that stopped a value: a press that prints thinner or thicker than any form roller is set', () => {
    const { least, most } = ranges.film
    for (const [film, bound] of [
      [0.6 * least, least],
      [1.5 * most, most],
    ]) {
      const beyond = { ...setUp, inks: setUp.inks.map((ink, unit) => (unit < 2 ? { ...ink, film } : ink)) }
      const sheet = sheetOfMadeUpPress({ ...madeUp, setUp: beyond, parameters: [], truth: [], patches: [1, 2, 4, 8] })
      const fit = fitted({ setUp, sheet, status: 'T', parameters: films })
      expect(fit.values.map(({ atBound }) => atBound)).toEqual([true, true, false, false])
      expect(fit.values.slice(0, 2).map(({ value }) => value)).toEqual([bound, bound])
      expect(fit.cautions.find(({ message }) => message === 'fit.atBound')?.values).toEqual({
        parameters: ['black', 'cyan'].map((ink) => ({ message: 'fit.parameter.film', values: { ink } })),
      })
    }
  })

  it('and of a sheet that the model meets, nothing', () => {
    expect(fitted(taskFor({ patches: [1, 2, 4, 8] }, films)).cautions).toEqual([])
  })
})

describe('what may be fitted', () => {
  it('is each ink’s film and tack, the paper’s evenness and setting gain, and the dampening of a press that has one', () => {
    expect(fitParameters(setUp)).toHaveLength(4 + 4 + 3)
    expect(fitParameters(checkSetUp([16, 14, 12, 10], { waterless: true }))).not.toContainEqual(press('dampening'))
  })

  it('starts with films, and one value for all traps once overprints were read', () => {
    const sheet = sheetOfMadeUpPress(madeUp)
    expect(usualParameters(setUp, sheet)).toEqual(usual)
    expect(usualParameters(checkSetUp([16, 14, 12, 10], { waterless: true }), sheet).at(-1)).toEqual(
      press('settingGain'),
    )
    const solids = sheetOfMadeUpPress({ ...madeUp, patches: [1, 2, 4, 8] })
    expect(usualParameters(setUp, solids)).toEqual(films)
  })

  it('is put into a set-up and read back', () => {
    const all = fitParameters(setUp)
    const values = all.map((_, i) => 2 + i / 10)
    const changed = withParameters(setUp, all, values)
    expect(all.map((parameter) => valueIn(changed, parameter))).toEqual(values)
  })

  it('moves the inks’ own dampenings along with the press’s, within their range', () => {
    const own = { ...setUp, inks: setUp.inks.map((ink, i) => ({ ...ink, dampening: [0, 0.5, 1, 2][i] })) }
    const damper = withParameters(own, [press('dampening')], [1.4])
    expect(damper.inks.map(({ dampening }) => dampening)).toEqual(
      [0.4, 0.9, 1.4, 2].map((value) => expect.closeTo(value, 12) as number),
    )
    const following = withParameters(setUp, [press('dampening')], [1.4])
    expect(following.inks).toEqual(setUp.inks)
  })
})
