/**
 * Numbers at the edges: every control at its least and its most, alone and with every other, and all of them at an end at
 * once, so that each pair of ends stands beside many others. Finite, no ink lost, and the rules of properties.test.ts.
 */
import { describe, expect, test } from 'vitest'
import { isRefused } from '../../src/measure/said.ts'
import { readPatch, stripOf } from '../../src/measure/strip.ts'
import { seededDraws } from '../../src/physics/random.ts'
import { checkSetUp as checked } from '../../src/press/check-setup.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { writeSetUp } from '../../src/session/write-setup.ts'
import type { End, Knob } from './edges.ts'
import { ends, knobs, pairsOfEnds, putAt, usual } from './edges.ts'

const readings = ['settled', 'first'] as const

/** What is wrong with the numbers of a set-up; empty where nothing is. */
function wrongWith(setUp: SetUp, colours: boolean): string[] {
  const run = runPress(setUp)
  const { traps, onBare, films, torn, contamination, lifted } = readSheet(run)
  const shares = [...torn, ...contamination, ...lifted.flat()]
  const amounts = [...onBare, ...films.flatMap((film) => [...film]), ...traps.map(({ massTrap }) => massTrap)]
  return [
    ...(run.balance < 1e-9 ? [] : [`ink is lost: ${run.balance}`]),
    ...([...shares, ...amounts].every((value) => Number.isFinite(value) && value >= 0) ? [] : ['a number is none']),
    ...(shares.every((share) => share <= 1) ? [] : ['a share is more than all']),
    ...(colours ? wrongColours(run) : []),
  ]
}

function wrongColours(run: ReturnType<typeof runPress>): string[] {
  const strip = stripOf(run)
  return strip.sheet.films.flatMap((_, patch) => {
    const { colour } = readPatch(strip, patch)
    if (isRefused(colour)) return []
    const densities = Object.values(colour.absoluteDensities).flatMap((each) => Object.values(each))
    const numbers = [...Object.values(colour.Lab), ...densities] as number[]
    return numbers.every(Number.isFinite) && numbers.length >= 9 ? [] : [`a colour of patch ${patch} is none`]
  })
}

/** Every way it goes wrong, named by its controls. */
function faults(setUp: SetUp, all: readonly (readonly End[])[], colours = true): string[] {
  return all.flatMap((at) =>
    readings.flatMap((reading) =>
      wrongWith({ ...putAt(setUp, at), reading }, colours).map(
        (wrong) => `${at.map(({ knob, value }) => `${knob.name} ${value}`).join(', ')}, ${reading}: ${wrong}`,
      ),
    ),
  )
}

/** Rows with every control at one of its ends, drawn until every pair of ends stands in one. */
function coveringRows(all: readonly Knob[], seed: number): End[][] {
  const draw = seededDraws(seed)
  const open = new Set(pairsOfEnds(all).map(nameOf))
  const rows: End[][] = []
  while (open.size > 0) {
    const row = all.map((knob) => ({ knob, value: draw() < 0.5 ? knob.least : knob.most }))
    const before = open.size
    row.forEach((one, at) => row.slice(at + 1).forEach((other) => open.delete(nameOf([one, other]))))
    if (open.size < before) rows.push(row)
  }
  return rows
}

function nameOf([one, other]: readonly [End, End]): string {
  return `${one.knob.name} ${one.value}, ${other.knob.name} ${other.value}`
}

test('the set-ups at the edges are legal, and each control has two ends', () => {
  const all = knobs(4)
  expect(all).toHaveLength(4 * 6 + 9 + 4)
  for (const end of ends(all)) expect(checked(writeSetUp(putAt(usual(4), [end])))).toHaveProperty('setUp')
})

describe('finite numbers, and no ink lost', () => {
  // One ink is no legal set-up, but what a press of one unit is solved as on the way.
  test.each([1, 2, 4, 8])('%i inks, each control at an end', (inks) => {
    const all = ends(knobs(inks)).map((end) => [end])
    // What the last of eight units does is what costs; the controls of every other ink are tried.
    expect(faults(usual(inks), all, inks < 8)).toEqual([])
  })

  test('4 inks, any two controls at their ends', () => {
    const pairs = pairsOfEnds(knobs(4))
    expect(pairs).toHaveLength((37 * 36 * 4) / 2)
    expect(faults(usual(4), pairs, false)).toEqual([])
  })

  test('4 inks, all controls at an end, every pair of ends among them', () => {
    const rows = Array.from({ length: 12 }, (_, seed) => coveringRows(knobs(4), seed)).flat()
    expect(rows.length).toBeGreaterThan(100)
    expect(faults(usual(4), rows)).toEqual([])
  })
})

/** Rounding, and what settling leaves open where paper is torn nearly everywhere; as in properties.test.ts. */
const slack = 1e-7

/** The films of each ink as the sheet leaves its unit, by patch. */
function filmLeft(run: ReturnType<typeof runPress>, unit: number, patch: number): number {
  const { amounts, units, inks } = run.sheets[unit + 1]
  return amounts[(patch * units + unit) * inks + unit]
}

/** The control from its least to its most beside every end of every other; the names of those beside which `holds` does not. */
function broken(name: string, holds: (least: SetUp, most: SetUp) => boolean, base = usual(4)): string[] {
  const all = knobs(4)
  const moved = all.find((each) => each.name === name)
  if (!moved) throw new Error(`No control is called ${name}.`)
  const others: (End | null)[] = [null, ...ends(all.filter((each) => each !== moved))]
  return others.flatMap((end) => {
    const beside = end ? putAt(base, [end]) : base
    const [least, most] = [moved.least, moved.most].map((value) => moved.put(beside, value))
    return holds(least, most) ? [] : [end ? `${end.knob.name} ${end.value}` : 'all usual']
  })
}

const tornIn = (setUp: SetUp) => readSheet(runPress(setUp)).worstTorn

describe('from one end to the other, beside every end of every other control', () => {
  test.each([2, 3, 4])('raising the tack of ink %i never raises the film it leaves on wet ink, settled', (place) => {
    const unit = place - 1
    const never = (least: SetUp, most: SetUp) => {
      const [before, after] = [runPress(least), runPress(most)]
      const wet = Array.from({ length: 1 << unit }, (_, below) => below | (1 << unit)).slice(1)
      return wet.every((patch) => filmLeft(after, unit, patch) <= filmLeft(before, unit, patch) * (1 + slack) + 1e-9)
    }
    expect(broken(`tack of ink ${place}`, never)).toEqual([])
  })

  test('raising speed never lowers picking, where less than 5 % of the worst patch is torn', () => {
    const never = (least: SetUp, most: SetUp) => {
      const before = tornIn(least)
      return before > 0.05 || tornIn(most) >= before - slack
    }
    expect(broken('speed of the press', never)).toEqual([])
  })

  test('stronger paper never raises picking, where less than half of the worst patch is torn', () => {
    const never = (least: SetUp, most: SetUp) => {
      const before = tornIn(least)
      return before > 0.5 || tornIn(most) <= before + slack
    }
    // At its weakest the paper is torn beyond that; so it is raised from 30 as well.
    const from30 = (least: SetUp, most: SetUp) => never(putStrength(least, 30), most)
    expect(broken('surfaceStrength of the paper', never)).toEqual([])
    expect(broken('surfaceStrength of the paper', from30)).toEqual([])
  })

  test('more time between units never lowers the trap on the ink just before where nothing picks: first sheet', () => {
    const strong: SetUp = { ...usual(4), reading: 'first' }
    const trap = (setUp: SetUp, later: number) => {
      const run = runPress(putStrength(setUp, 1e9))
      return filmLeft(run, later, (1 << later) | (1 << (later - 1))) / filmLeft(run, later, 1 << later)
    }
    const never = (least: SetUp, most: SetUp) =>
      [1, 2, 3].every((later) => trap(most, later) >= trap(least, later) - slack)
    expect(broken('interval of the press', never, strong)).toEqual([])
  })
})

function putStrength(setUp: SetUp, surfaceStrength: number): SetUp {
  return { ...setUp, paper: { ...setUp.paper, surfaceStrength } }
}
