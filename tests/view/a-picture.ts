/** Pictures for the tests, from computed runs; colours are made up, as no test of a view is about them. */
import { usualInk, usualPress } from '../../src/press/presets.ts'
import { nipAccount } from '../../src/press/account.ts'
import { printCells } from '../../src/press/cells.ts'
import { runPress } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { papers } from '../../src/physics/paper.ts'
import type { PaperName } from '../../src/physics/paper.ts'
import type { BenchPicture } from '../../src/view/picture.ts'

const grid = { width: 96, height: 64 }

export function setUpOf(tacks: number[], change: Partial<SetUp> = {}): SetUp {
  return {
    inks: tacks.map((tack, unit) => usualInk(`ink ${unit + 1}`, tack)),
    paper: papers.coated,
    press: usualPress('sheet-fed'),
    reading: 'first',
    seed: 1,
    ...change,
  }
}

/** A fast web on weak paper: some of it tears. */
export function tearing(paper: PaperName = 'weak uncoated'): SetUp {
  return setUpOf([12, 11, 10, 9], { paper: papers[paper], press: usualPress('web'), reading: 'settled' })
}

export function pictureOf(setUp: SetUp, change: Partial<BenchPicture> = {}): BenchPicture {
  const run = runPress(setUp)
  const units = setUp.inks.length
  const patch = change.patch ?? (1 << units) - 1
  return {
    run,
    patch,
    accounts: run.line.units.map(({ index }) => nipAccount(run, index, patch)),
    cells: printCells(run, patch, grid),
    cellSide: 5,
    unit: units - 1,
    phase: 0.7,
    row: 32,
    inkColours: setUp.inks.map((_, ink) => 0x102030 * (ink + 1)),
    colourOf: (amounts) =>
      Array.from(amounts).reduce((sum, um, ink) => sum + Math.round(um * 40) * (ink + 3), 0x404040),
    paint: (_, pixels) => pixels.fill(255),
    inkLetters: setUp.inks.map((_, ink) => String.fromCharCode(65 + ink)),
    face: 'ink',
    theme: { ground: 0xe4dfd5, paper: 0xfbf9f4, graphite: 0x2a2927, line: 0xc6bfb2, accent: 0x0a6358, heavy: 1 },
    words: {
      since: (seconds, unit) => `${seconds.toFixed(2)} s since unit ${unit + 1}`,
      units: setUp.inks.map(({ name }) => name),
      interval: 'interval',
      paper: 'paper',
      blanket: 'blanket',
      plate: 'plate',
      inkRoller: 'ink roller',
      dampening: 'dampening',
      impression: 'impression',
      sheet: 'sheet',
      pull: 'pull',
      notToScale: 'not to scale',
      marks: { split: 'split', lifted: 'lifted', torn: 'torn', untouched: 'untouched' },
      length: (um) => `${um} um`,
      tack: (pull) => pull.toFixed(1),
    },
    motion: true,
    largeType: false,
    magnified: 1,
    cut: true,
    ...change,
  }
}

/** Area of an outline given as x, y in turn (the shoelace rule). */
export function areaOf(points: readonly number[]): number {
  let twice = 0
  for (let i = 0; i < points.length; i += 2) {
    const j = (i + 2) % points.length
    twice += points[i] * points[j + 1] - points[j] * points[i + 1]
  }
  return Math.abs(twice) / 2
}
