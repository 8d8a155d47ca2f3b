import { describe, expect, it } from 'vitest'
import { gatherSheet } from '../../src/measure/press-sheet.ts'
import { patchOf } from '../../src/press/patches.ts'

const inks = ['black', 'cyan', 'magenta', 'yellow']
const row = (line: number, patch: string, red: string, green: string, blue: string) => ({
  line,
  cells: { patch, red, green, blue },
})

describe('typed readings', () => {
  it('name a patch by its inks in whatever order, case and spacing', () => {
    for (const name of ['magenta+yellow', 'yellow + magenta', ' Yellow+MAGENTA ', "'magenta + yellow"]) {
      const { sheet, problems } = gatherSheet([row(1, name, '0,15', '1.40', '1,38')], inks)
      expect(problems).toEqual([])
      expect(sheet.patches).toEqual([
        { patch: patchOf([2, 3]), count: 1, densities: { red: 0.15, green: 1.4, blue: 1.38 }, spread: null },
      ])
    }
  })

  it('know an ink with a plus in its name, and an ink called paper', () => {
    const { sheet } = gatherSheet(
      [row(1, 'red+ + deep', '0', '1', '1'), row(2, 'red+', '0', '1', '1')],
      ['red+', 'deep'],
    )
    expect(sheet.patches.map(({ patch }) => patch)).toEqual([patchOf([0]), patchOf([0, 1])])
    expect(gatherSheet([row(1, 'paper', '1', '1', '1')], ['paper', 'deep']).sheet.patches).toHaveLength(1)
  })

  it('are averaged over several sheets, with the spread of one reading: 1.30, 1.40, 1.50 give 1.40 and 0.10', () => {
    const { sheet } = gatherSheet(
      ['1.30', '1.40', '1.50'].map((red, i) => row(i + 1, 'cyan', red, '0.4', '0.2')),
      inks,
    )
    expect(sheet.patches).toHaveLength(1)
    const [{ count, densities, spread }] = sheet.patches
    expect(count).toBe(3)
    expect(densities.red).toBeCloseTo(1.4, 12)
    expect(spread?.red).toBeCloseTo(0.1, 12)
    expect(spread?.green).toBeCloseTo(0, 12)
  })

  it('are absolute when the paper was read too: its densities come off', () => {
    const { sheet, problems } = gatherSheet(
      [row(1, 'paper', '0.06', '0.08', '0.10'), row(2, 'yellow', '0.05', '0.12', '1.10')],
      inks,
    )
    expect(problems).toEqual([])
    expect(sheet.paper).toEqual({ red: 0.06, green: 0.08, blue: 0.1 })
    expect(sheet.patches[0].densities.red).toBe(0)
    expect(sheet.patches[0].densities.blue).toBeCloseTo(1, 12)
  })

  it('are passed over where a row of the template was left open', () => {
    expect(gatherSheet([row(1, 'cyan', '', ' ', ''), row(2, '', '', '', '')], inks)).toEqual({
      sheet: { inks, patches: [], paper: null },
      problems: [],
    })
  })

  // A densitometer's range is 0 to 4.
  it.each([
    ['.55', 0.55],
    [',5', 0.5],
    ['+1.', 1],
    ['0', 0],
    ['4', 4],
  ])('take %s as %d', (typed, density) => {
    const { sheet } = gatherSheet([row(1, 'cyan', typed, '1', '1')], inks)
    expect(sheet.patches[0].densities.red).toBe(density)
  })

  it.each([
    ['cyan + cian', '1', { ink: 'cian', near: 'cyan', known: 'black, cyan, magenta, yellow' }],
    ['magneta + black', '1', { ink: 'magneta', near: 'magenta' }],
    ['cyan+cyan', '1', { patch: 'cyan+cyan' }],
    ['cyan', '', { filter: 'green' }],
    ['cyan', 'n/a', { filter: 'green', text: 'n/a' }],
    ['cyan', '-1', { filter: 'green', value: -1 }],
    ['cyan', '4.01', { filter: 'green', value: 4.01, most: 4 }],
  ])('say of %j with %j through the green filter what is wrong with it', (patch, green, values) => {
    expect(gatherSheet([row(1, patch, '1', green, '1')], inks).problems).toMatchObject([{ line: 1, said: { values } }])
  })

  it('list what is wrong in the order of the lines, be it one row or what several make together', () => {
    const { problems } = gatherSheet(
      [row(1, 'paper', '0.1', '0.1', '0.1'), row(2, 'cyan', '0', '0', '0'), row(3, 'mauve', '1', '1', '1')],
      inks,
    )
    expect(problems.map(({ line }) => line)).toEqual([2, 3])
  })

  it('have of two of one patch the mean, and the deviation of two: their difference over the root of 2', () => {
    const { sheet } = gatherSheet([row(1, 'cyan', '1', '1', '1'), row(2, 'cyan', '1.2', '1', '1')], inks)
    expect(sheet.patches[0].densities.red).toBeCloseTo(1.1, 12)
    expect(sheet.patches[0].spread?.red).toBeCloseTo(0.2 / Math.SQRT2, 12)
  })

  it.each([
    ['', '1', '1', '1', 'sheet.noPatch'],
    ['cian', '1', '1', '1', 'sheet.unknownInk'],
    ['cyan+', '1', '1', '1', 'sheet.unknownInk'],
    ['cyan+paper', '1', '1', '1', 'sheet.unknownInk'],
    ['x'.repeat(10_000), '1', '1', '1', 'sheet.unknownInk'],
    ['cyan+cyan', '1', '1', '1', 'sheet.inkTwice'],
    ['cyan', '1', '', '1', 'sheet.missingCell'],
    ['cyan', '1', 'n/a', '1', 'sheet.notANumber'],
    ['cyan', '1', 'NaN', '1', 'sheet.notANumber'],
    ['cyan', '1', 'Infinity', '1', 'sheet.notANumber'],
    ['cyan', '1', '1e1', '1', 'sheet.notANumber'],
    ['cyan', '1', '0x1', '1', 'sheet.notANumber'],
    ['cyan', '1', '1.000,5', '1', 'sheet.notANumber'],
    ['cyan', '1', '=1+1', '1', 'sheet.notANumber'],
    ['cyan', '1', '-0.2', '1', 'sheet.negative'],
    ['cyan', '140', '0.4', '1', 'sheet.tooHigh'],
  ])('%s %s %s %s is listed by its line: %s', (patch, red, green, blue, message) => {
    const { sheet, problems } = gatherSheet(
      [row(7, patch, red, green, blue), row(8, 'cyan', '1.4', '0.4', '0.2')],
      inks,
    )
    expect(problems).toMatchObject([{ line: 7, said: { message } }])
    expect(sheet.patches).toHaveLength(1)
    // However long a cell was, a message quotes no more of it than a name may hold.
    expect(JSON.stringify(problems[0].said.values ?? {}).length).toBeLessThan(200)
  })

  it('offer the ink that was meant', () => {
    const [{ said }] = gatherSheet([row(1, 'magneta', '1', '1', '1')], inks).problems
    expect(said.values).toMatchObject({ ink: 'magneta', near: 'magenta' })
  })

  it('that read clearly below their own paper are listed, not lifted to 0', () => {
    const { sheet, problems } = gatherSheet(
      [row(1, 'paper', '0.30', '0.30', '0.30'), row(2, 'cyan', '0.10', '0.35', '0.32')],
      inks,
    )
    expect(problems).toEqual([{ line: 2, said: { message: 'sheet.belowPaper' } }])
    expect(sheet.patches).toEqual([])
  })
})
