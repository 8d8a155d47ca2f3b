import { describe, expect, it } from 'vitest'
import { balanceError } from '../../src/press/balance.ts'
import { lineOf, storeFilm } from '../../src/press/line.ts'
import { emptyPassage, printSheet, settleLine, startingTrains } from '../../src/press/run.ts'
import { copyTrain } from '../../src/press/train.ts'
import { checkSetUp } from './legal-setups.ts'

const ink = 1
const tooMuch = 0.5

/** One revolution from the first sheet's rollers; `change` adds to what it left behind. */
function errorOf(change: (left: ReturnType<typeof revolution>) => void): number {
  const left = revolution()
  change(left)
  const { line, before, after, passage } = left
  return balanceError(line, before, after, passage.turns, passage.sheets[passage.sheets.length - 1])
}

function revolution() {
  const line = lineOf(checkSetUp([10, 12, 14, 16]))
  const after = startingTrains(line, settleLine(line))
  const before = after.map(copyTrain)
  const passage = emptyPassage(line)
  printSheet(line, after, passage)
  return { line, before, after, passage }
}

describe('the balance of a revolution', () => {
  it('comes out even', () => {
    expect(errorOf(() => undefined)).toBeLessThan(1e-14)
  })

  // Ink of one kind on the press: its store of 80 um, some um on its plates and blankets, and what is let in.
  it('tells half a micrometre too much of an ink, as a share of all of that ink, wherever it is', () => {
    const found = {
      'in the store': errorOf(({ after }) => (after[ink].store[ink] += tooMuch / storeFilm)),
      'on the plate': errorOf(({ after }) => {
        for (let at = ink; at < after[3].plate.length; at += 4) after[3].plate[at] += tooMuch
      }),
      'on the blanket': errorOf(({ after }) => {
        for (let at = ink; at < after[3].blanket.length; at += 4) after[3].blanket[at] += tooMuch
      }),
      'on the sheet': errorOf(({ passage }) => {
        // In the lowest layer of each patch; patches share the sheet out among them.
        const { amounts, units } = passage.sheets[4]
        for (let at = ink; at < amounts.length; at += 4 * units) amounts[at] += tooMuch
      }),
      'let out': errorOf(({ passage }) => (passage.turns[2].discarded[ink] += tooMuch)),
    }
    for (const [where, error] of Object.entries(found)) {
      expect(error, where).toBeCloseTo(found['in the store'], 12)
      expect(error).toBeGreaterThan(tooMuch / 90)
      expect(error).toBeLessThan(tooMuch / 80)
    }
    // Let out instead of kept: nothing is missing.
    const letOut = errorOf(({ after, passage }) => {
      after[ink].store[ink] -= tooMuch / storeFilm
      passage.turns[2].discarded[ink] += tooMuch
    })
    expect(letOut).toBeLessThan(1e-14)
    // What was there before, or was let in, counts in the whole as well.
    const whole = tooMuch / found['in the store']
    expect(errorOf(({ passage }) => (passage.turns[ink].fresh += tooMuch))).toBeCloseTo(tooMuch / (whole + tooMuch), 12)
    expect(errorOf(({ before }) => (before[ink].store[ink] += tooMuch / storeFilm))).toBeCloseTo(
      tooMuch / (whole + tooMuch),
      12,
    )
  })
})
