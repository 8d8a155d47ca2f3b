import { describe, expect, test } from 'vitest'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import type { ScenarioName } from '../../src/session/scenarios.ts'
import { scenarioNames, scenarios } from '../../src/session/scenarios.ts'

function setUpOf(name: ScenarioName): SetUp {
  const checked = checkSetUp(scenarios[name])
  if ('problems' in checked) throw new Error(`${name}: ${checked.problems[0].message}`)
  return checked.setUp
}

/** Share of each ink's bare-paper film that is on the sheet where all four print. */
function onFourFilms(setUp: SetUp): Record<string, number> {
  const { films, onBare } = readSheet(runPress(setUp))
  return Object.fromEntries(setUp.inks.map(({ name }, ink) => [name, films[15][ink] / onBare[ink]]))
}

test.each(scenarioNames)('%s is a legal set-up of four inks', (name) => {
  expect(setUpOf(name).inks).toHaveLength(4)
})

describe('what a scenario tells to look at is there in the numbers', () => {
  const descending = setUpOf('descending')

  test('tacks that step down: the newest film is the weakest in most spots, and a little is lifted all the same', () => {
    const { lifted, traps } = readSheet(runPress(descending))
    expect(Math.min(...traps.map(({ massTrap }) => massTrap))).toBeGreaterThan(0.5)
    expect(Math.max(...lifted[3])).toBeGreaterThan(0.01)
  })

  test('reversed: unit 4 lifts far more, and settling forgives much of it', () => {
    const reversed = setUpOf('reversed')
    const most = (setUp: SetUp) => Math.max(...readSheet(runPress(setUp)).lifted[3])
    expect(most(reversed)).toBeGreaterThan(2 * most(descending))
    const black = (reading: SetUp['reading']) => onFourFilms({ ...reversed, reading })['black']
    expect(black('settled')).toBeGreaterThan(1.5 * black('first'))
  })

  test('equal tacks: magenta and yellow take worse than on the stair, but better than reversed', () => {
    const [stair, equal, reversed] = [descending, setUpOf('equal'), setUpOf('reversed')].map(onFourFilms)
    expect(equal['magenta']).toBeLessThan(stair['magenta'])
    expect(equal['yellow']).toBeLessThan(stair['yellow'])
    expect(equal['magenta']).toBeGreaterThan(reversed['magenta'])
  })

  test('first ink moved to unit 2: black loses film, magenta and yellow hardly change', () => {
    const [stair, moved] = [descending, setUpOf('moved')].map(onFourFilms)
    expect(stair['black'] - moved['black']).toBeGreaterThan(0.2)
    expect(Math.abs(stair['magenta'] - moved['magenta'])).toBeLessThan(0.05)
    expect(Math.abs(stair['yellow'] - moved['yellow'])).toBeLessThan(0.05)
  })

  test('too fast a press: at least ten times the picking of graded web inks on the same paper', () => {
    const fast = setUpOf('fast')
    const graded = { ...fast, inks: setUpOf('weak').inks }
    expect(readSheet(runPress(fast)).worstTorn).toBeGreaterThan(10 * readSheet(runPress(graded)).worstTorn)
  })

  test('weak paper: the order is right, the paper gives way', () => {
    const weak = setUpOf('weak')
    expect(weak.inks.map(({ tack }) => tack)).toEqual([12, 11, 10, 9])
    expect(readSheet(runPress(weak)).worstTorn).toBeGreaterThan(0.005)
  })
})
