import { describe, expect, it } from 'vitest'
import { gatherSheet } from '../../src/measure/press-sheet.ts'
import { sheetTraps } from '../../src/measure/sheet-traps.ts'

const inks = ['cyan', 'magenta', 'yellow']
const process = [true, true, true]

function sheetOf(readings: Record<string, [string, string, string]>, names = inks) {
  const rows = Object.entries(readings).map(([patch, [red, green, blue]], i) => ({
    line: i + 1,
    cells: { patch, red, green, blue },
  }))
  return gatherSheet(rows, names).sheet
}

// The densities are those of the worked cases (mark W); the filters that are not read hold anything.
const sheet = sheetOf({
  cyan: ['1.4', '0.40', '0.15'],
  magenta: ['0.1', '1.40', '0.65'],
  yellow: ['0.0', '0.10', '1.00'],
  'cyan+magenta': ['1.5', '1.42', '0.8'],
  'cyan+yellow': ['1.4', '0.5', '1.02'],
  'magenta+yellow': ['0.1', '1.4', '1.40'],
})

describe('traps of a press sheet', () => {
  it('are those of the worked cases, each through the filter of its second ink', () => {
    const traps = sheetTraps(sheet, process)
    expect(traps.map(({ rightFilter }) => rightFilter?.filter)).toEqual(['green', 'blue', 'blue'])
    const percents = traps.map(({ apparent }) => ('percent' in apparent ? apparent.percent : null))
    const wanted = [
      { preucil: 72.86, brunner: 97.75, ritz: 94.2 },
      { preucil: 87, brunner: 97.34, ritz: 96.12 },
      { preucil: 75, brunner: 98.22, ritz: 91.35 },
    ]
    wanted.forEach((trap, i) => {
      for (const equation of ['preucil', 'brunner', 'ritz'] as const) {
        expect(percents[i]?.[equation]).toBeCloseTo(trap[equation], 1)
      }
    })
  })

  it('name the patch that is missing', () => {
    const traps = sheetTraps(
      sheetOf({
        cyan: ['1.4', '0.4', '0.15'],
        'cyan+magenta': ['1.5', '1.42', '0.8'],
        'magenta+yellow': ['0.1', '1.4', '1.4'],
        yellow: ['0', '0.1', '1'],
      }),
      process,
    )
    expect(traps.map(({ apparent }) => apparent)).toEqual([
      { refused: { message: 'sheet.patchMissing', values: { patch: 'magenta' } } },
      { refused: { message: 'sheet.patchMissing', values: { patch: 'magenta' } } },
    ])
  })

  it('take the last ink of three against the overprint of the two below it', () => {
    const [, , trap] = sheetTraps(
      sheetOf({
        yellow: ['0', '0.1', '1.00'],
        magenta: ['0.1', '1.4', '0.6'],
        cyan: ['1.4', '0.4', '0.1'],
        'cyan+magenta': ['1.5', '1.4', '0.70'],
        'cyan+yellow': ['1.5', '0.5', '1'],
        'cyan+magenta+yellow': ['1.5', '1.5', '1.30'],
      }),
      process,
    )
    expect(trap.below).toEqual([0, 1])
    expect('percent' in trap.apparent && trap.apparent.percent.preucil).toBeCloseTo(60, 10)
  })

  it('read a spot ink through the filter in which its own solid was read highest', () => {
    const [trap] = sheetTraps(
      sheetOf({ cyan: ['1.4', '0.4', '0.2'], moss: ['1.1', '0.5', '0.9'], 'cyan+moss': ['1.9', '0.8', '1'] }, [
        'cyan',
        'moss',
      ]),
      [true, false],
    )
    expect(trap.rightFilter).toMatchObject({ filter: 'red', because: { message: 'filter.strongest' } })
  })

  it('refuse a solid that reads 0, and caution about another filter', () => {
    const zero = sheetOf({ cyan: ['1.4', '0.4', '0'], yellow: ['0', '0', '0'], 'cyan+yellow': ['1.4', '0.4', '0.4'] })
    expect(sheetTraps(zero, process)[0].apparent).toMatchObject({ refused: { message: 'trap.secondReadsNothing' } })
    expect(sheetTraps(sheet, process, 'blue')[0].caution).toMatchObject({ message: 'filter.wrong' })
    expect(sheetTraps(sheet, process, 'blue')[2].caution).toBeNull()
  })
})
