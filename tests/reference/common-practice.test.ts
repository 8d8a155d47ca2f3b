/** What the trade does as a matter of common practice: no published source, so each is a check of sense only. */
import { describe, expect, it } from 'vitest'
import { papers } from '../../src/physics/paper.ts'
import { usualPress } from '../../src/press/presets.ts'
import { readSheet } from '../../src/press/readings.ts'
import { runPress } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { checkSetUp } from '../press/legal-setups.ts'

/** All orders of some tacks. */
function ordersOf(tacks: readonly number[]): number[][] {
  if (tacks.length <= 1) return [[...tacks]]
  return tacks.flatMap((first, i) => ordersOf(tacks.filter((_, j) => j !== i)).map((rest) => [first, ...rest]))
}

/** Mean share of the bare-paper film that the inks have where all print: how well the whole overprint traps. */
function overprint(setUp: SetUp): number {
  const { films, onBare } = readSheet(runPress(setUp))
  const all = films[films.length - 1]
  return onBare.reduce((sum, bare, ink) => sum + all[ink] / bare, 0) / onBare.length
}

const sheetFed = (tacks: readonly number[], waterless: boolean, reading: SetUp['reading']) =>
  checkSetUp(tacks, { waterless, reading })
const web = (tacks: readonly number[], waterless: boolean, reading: SetUp['reading']): SetUp => ({
  ...checkSetUp(tacks, { reading }),
  paper: papers['light-weight coated'],
  press: { ...usualPress('web'), waterless },
})

describe('common practice', () => {
  it.each([
    { name: 'sheet-fed 16, 14, 12, 10 on coated paper', tacks: [16, 14, 12, 10], press: sheetFed },
    { name: 'web 12, 11, 10, 9 on light-weight coated paper', tacks: [12, 11, 10, 9], press: web },
  ])('prints best in descending order of tack among all orders, worst reversed: $name', ({ tacks, press }) => {
    for (const waterless of [false, true]) {
      for (const reading of ['first', 'settled'] as const) {
        const ranked = ordersOf(tacks)
          .map((order) => ({ order, share: overprint(press(order, waterless, reading)) }))
          .sort((a, b) => b.share - a.share)
        expect(ranked).toHaveLength(24)
        expect(ranked[0].order).toEqual(tacks)
        expect(ranked[23].order).toEqual(tacks.toReversed())
      }
    }
  })

  it('grades the tacks down by 2 to 4 points a unit: steps of 2 trap better than none, steps of 3 better still', () => {
    const shares = [
      [13, 13, 13, 13],
      [16, 14, 12, 10],
      [17.5, 14.5, 11.5, 8.5],
    ].map((tacks) => overprint(checkSetUp(tacks)))
    expect(shares[1]).toBeGreaterThan(shares[0])
    expect(shares[2]).toBeGreaterThan(shares[1])
  })

  it('runs softer inks on the faster press: the web set pulls on its paper about as the sheet-fed set on its own', () => {
    // Handbook: web inks have about two thirds of the sheet-fed tack. Pull goes with speed^0.35: (10 / 2.5)^0.35 = 1.62.
    const sheetFedTorn = readSheet(runPress(sheetFed([16, 14, 12, 10], false, 'settled'))).worstTorn
    const webTorn = readSheet(runPress(web([12, 11, 10, 9], false, 'settled'))).worstTorn
    const wrongTorn = readSheet(runPress(web([16, 14, 12, 10], false, 'settled'))).worstTorn
    expect(webTorn).toBeLessThan(0.005)
    expect(wrongTorn / webTorn).toBeGreaterThan(10)
    expect(sheetFedTorn).toBeLessThan(0.005)
  })

  // Remedies the trade tries, for a reversed set that traps badly.
  const reversed = checkSetUp([10, 12, 14, 16], { waterless: true })
  const changed = (change: (setUp: SetUp) => void) => {
    const setUp = structuredClone(reversed)
    change(setUp)
    return setUp
  }
  it.each([
    { remedy: "lower the last ink's tack", change: (setUp: SetUp) => (setUp.inks[3].tack = 12) },
    { remedy: "raise the first ink's tack", change: (setUp: SetUp) => (setUp.inks[0].tack = 14) },
    { remedy: 'cool the first unit', change: (setUp: SetUp) => (setUp.inks[0].temperature = 15) },
    { remedy: 'more film on the last ink', change: (setUp: SetUp) => (setUp.inks[3].film = 5) },
    { remedy: 'a slower press, so more time to set', change: (setUp: SetUp) => (setUp.press.interval = 0.9) },
    { remedy: 'dry between the units', change: (setUp: SetUp) => (setUp.inks[3].dryBefore = true) },
    { remedy: 'run it dampened', change: (setUp: SetUp) => (setUp.press.waterless = false) },
  ])('helps a reversed waterless set: $remedy', ({ change }) => {
    expect(overprint(changed(change))).toBeGreaterThan(overprint(reversed) + 0.005)
  })

  it('pays for it: a cooled or stronger first ink picks more, and so does more speed', () => {
    const torn = (setUp: SetUp) => readSheet(runPress(setUp)).worstTorn
    const weak = { ...reversed, paper: papers['weak uncoated'] }
    expect(torn({ ...weak, inks: weak.inks.map((ink) => ({ ...ink, temperature: 15 })) })).toBeGreaterThan(torn(weak))
    expect(torn({ ...weak, inks: weak.inks.map((ink) => ({ ...ink, tack: ink.tack * 1.2 })) })).toBeGreaterThan(
      torn(weak),
    )
    expect(torn({ ...weak, press: { ...weak.press, speed: 5 } })).toBeGreaterThan(torn(weak))
    expect(torn({ ...weak, paper: { ...weak.paper, surfaceStrength: 40 } })).toBeLessThan(torn(weak))
  })
})
