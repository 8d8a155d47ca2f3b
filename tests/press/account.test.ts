import { describe, expect, it } from 'vitest'
import { papers } from '../../src/physics/paper.ts'
import { filmPull } from '../../src/physics/pull.ts'
import { takenByBarePaper } from '../../src/physics/transfer.ts'
import type { NipAccount } from '../../src/press/account.ts'
import { nipAccount } from '../../src/press/account.ts'
import { runPress } from '../../src/press/run.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { checkSetUp } from './legal-setups.ts'

const all = 0b1111

/** Every nip of every patch of a set-up. */
function accountsOf(setUp: SetUp): NipAccount[] {
  const run = runPress(setUp)
  return setUp.inks.flatMap((_, unit) => Array.from({ length: 2 << unit }, (_, patch) => nipAccount(run, unit, patch)))
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
const weak = { ...papers.coated, surfaceStrength: 12 }
const settings: [string, SetUp][] = [
  ['descending', checkSetUp([16, 14, 12, 10])],
  ['reversed, first sheet', checkSetUp([10, 12, 14, 16], { reading: 'first' })],
  ['reversed, sheet 3', checkSetUp([10, 12, 14, 16], { reading: { sheet: 3 } })],
  ['on paper that tears', { ...checkSetUp([16, 14, 12, 10]), paper: weak }],
  [
    'dried half way, soiled',
    {
      ...checkSetUp([16, 14, 12, 10], { reading: 'first' }),
      inks: checkSetUp([16, 14, 12, 10]).inks.map((ink, unit) => ({ ...ink, soiled: 0.2, dryBefore: unit === 2 })),
    },
  ],
]

describe.each(settings)('the account of every nip, %s', (_, setUp) => {
  const accounts = accountsOf(setUp)
  // Patch without ink at the first unit: nothing meets there.
  const met = accounts.filter((account) => account.contact > 0)

  it('parts somewhere wherever ink meets: the shares add up to one', () => {
    for (const { torn, films, blanket } of met) {
      expect(sum(films.map((film) => film.broke)) + blanket.broke + torn).toBeCloseTo(1, 12)
    }
    expect(accounts.length - met.length).toBeLessThan(accounts.length / 2)
  })

  it('lets no ink appear or vanish: what lay there is what stays and what leaves', () => {
    for (const { films, lifted, laid, after, blanket } of accounts) {
      blanket.amounts.forEach((_, ink) => {
        const before = sum(films.map((film) => film.amounts[ink]))
        const left = sum(after.map((film) => film.amounts[ink]))
        expect(Math.abs(before - lifted[ink] + laid[ink] - left)).toBeLessThan(1e-14)
      })
    }
  })

  it('keeps thickness and amounts together, and never holds more than there is', () => {
    for (const { after } of accounts) {
      for (const { amounts, thickness, held } of after) {
        expect(Math.abs(sum(amounts) - thickness)).toBeLessThan(1e-14)
        expect(held).toBeLessThanOrEqual(thickness + 1e-15)
        expect(held).toBeGreaterThanOrEqual(0)
      }
    }
  })
})

describe('the account of a nip', () => {
  it('finds nothing where no unit has printed and the blanket is empty', () => {
    const account = nipAccount(runPress(checkSetUp([16, 14, 12, 10])), 0, 0)
    expect(account.contact).toBe(0)
    expect(account.pullOnPaper).toBe(0)
    expect(account.blanket.pull).toBe(null)
    expect(sum(account.lifted) + sum(account.laid)).toBe(0)
  })

  it('prints on bare paper as Walker and Fetsko say', () => {
    const { blanket, laid, onBare, torn } = nipAccount(runPress(checkSetUp([16, 14, 12, 10])), 0, all)
    expect(onBare).toBe(true)
    expect(torn).toBeLessThan(1e-4)
    expect(Math.abs(sum(laid) / takenByBarePaper(papers.coated, blanket.thickness) - (1 - torn))).toBeLessThan(1e-12)
  })

  it('knows no pull of a dry film and none breaks, yet torn paper takes it along', () => {
    const dried = checkSetUp([16, 14, 12, 10])
    dried.inks[3].dryBefore = true
    const run = runPress({ ...dried, paper: weak })
    const { films, lifted, torn, contact, onBare } = nipAccount(run, 3, all)
    expect(films.map((film) => film.pull)).toEqual([null, null, null])
    expect(films.map((film) => film.broke)).toEqual([0, 0, 0])
    expect(onBare).toBe(true)
    expect(torn).toBeGreaterThan(0.01)
    films.forEach((_, ink) => {
      const lay = sum(films.map((film) => film.amounts[ink]))
      expect(Math.abs(lifted[ink] / lay - contact * torn)).toBeLessThan(1e-12)
    })
  })

  it('gives a thin empty-handed blanket back what it lifted, in the settled state', () => {
    const { lifted, laid } = nipAccount(runPress(checkSetUp([10, 12, 14, 16])), 3, 0b0111)
    lifted.forEach((amount, ink) => expect(Math.abs(laid[ink] - amount)).toBeLessThan(1e-10))
    expect(sum(lifted)).toBeGreaterThan(0.01)
  })

  it('names the strength of the paper at that unit: four normal dampenings weaken it by 0.02 each', () => {
    const { strength } = nipAccount(runPress(checkSetUp([16, 14, 12, 10])), 3, all)
    expect(strength).toBeCloseTo(60 / 1.08, 10)
  })

  it('names the pull of every film by the whole equation, and brings that of their weakest to bear on the paper', () => {
    const plain = checkSetUp([10, 12, 14, 16], { reading: 'first' })
    const setUp = {
      ...plain,
      press: { ...plain.press, speed: 4, interval: 0.2 },
      inks: plain.inks.map((ink, unit) => ({ ...ink, temperature: 22 + 3 * unit, dampening: 0.5 + 0.25 * unit })),
    }
    const { speed, interval } = setUp.press
    const run = runPress(setUp)
    const { films, blanket, pullOnPaper } = nipAccount(run, 3, all)
    // A mixture's tack is the geometric mean by share.
    const tackOf = (amounts: readonly number[]) =>
      Math.exp(sum(amounts.map((amount, ink) => amount * Math.log(setUp.inks[ink].tack))) / sum(amounts))
    const pulls = [...films, blanket].map(({ unit, amounts, thickness }) => {
      const { temperature, dampening } = setUp.inks[unit]
      const wetBelow = sum(films.slice(0, unit).map((film) => film.thickness))
      const onSheet = { seconds: (3 - unit) * interval, wetBelow, paper: setUp.paper }
      const film = { tack: tackOf(amounts), speed, temperature, thickness, dampening }
      return filmPull(unit < 3 ? { ...film, onSheet } : film)
    })
    pulls.forEach((pull, unit) => expect([...films, blanket][unit].pull).toBeCloseTo(pull, 10))
    // (sum F^-m)^(-1/m), m 4.5 on coated paper
    expect(pullOnPaper).toBeCloseTo(sum(pulls.map((pull) => pull ** -4.5)) ** (-1 / 4.5), 10)
    const first = nipAccount(run, 0, all)
    expect(first.pullOnPaper).toBeCloseTo(first.blanket.pull ?? NaN, 10)
  })
})
