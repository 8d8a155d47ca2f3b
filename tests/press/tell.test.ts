import { describe, expect, it } from 'vitest'
import { papers } from '../../src/physics/paper.ts'
import { nipAccount } from '../../src/press/account.ts'
import { usualInk, usualPress } from '../../src/press/presets.ts'
import { runPress } from '../../src/press/run.ts'
import type { Ink, Reading } from '../../src/press/setup.ts'
import type { Told } from '../../src/press/tell.ts'
import { spots, tellNip } from '../../src/press/tell.ts'
import { nip } from '../../src/words/en/nip.ts'

function told(inks: Ink[], unit: number, patch: number, reading: Reading = 'first', paper = papers.coated): Told[] {
  const run = runPress({ inks, paper, press: usualPress('sheet-fed'), reading, seed: 1 })
  return tellNip(
    nipAccount(run, unit, patch),
    inks.map((ink) => ink.name),
  )
}

const soft = usualInk('soft', 10)
const stiff = usualInk('stiff', 16)
const messages = (statements: Told[]) => statements.map(({ message }) => message)

describe('telling a nip', () => {
  it('says that a film met bare paper, and how much stayed', () => {
    const [first] = told([stiff, soft], 0, 0b11)
    expect(first.message).toBe('nip.bare')
    if (first.message === 'nip.bare') expect(first.values.laid).toBeLessThan(first.values.brought)
  })

  it('says that a soft film on a stiff one split itself, and a stiff one on a soft one mostly did not', () => {
    expect(messages(told([stiff, soft], 1, 0b11))).toEqual(['nip.took', 'nip.lifted-one'])
    expect(messages(told([soft, { ...stiff, tack: 30 }], 1, 0b11))[0]).toBe('nip.failed')
  })

  it('names the weakest of several films below', () => {
    const [, lifted] = told([usualInk('a', 20), usualInk('b', 6), usualInk('c', 20)], 2, 0b111)
    expect(lifted).toMatchObject({ message: 'nip.lifted', values: { weakest: 'b', ink: 'c' } })
  })

  it('calls a film by the ink it is made of, also where it was left by a blanket that prints nothing there', () => {
    const inks = [usualInk('a', 16), usualInk('b', 14), usualInk('c', 12), usualInk('d', 10)]
    // Only the first and the last print: b and c are not on this patch at all.
    const [took, lifted] = told(inks, 3, 0b1001)
    expect(took).toMatchObject({ message: 'nip.took', values: { below: 'a', ink: 'd' } })
    expect(lifted).toMatchObject({ message: 'nip.lifted-one', values: { weakest: 'a' } })
  })

  it('counts spots so that split and lifted make up what was in contact', () => {
    const statements = told([soft, stiff], 1, 0b11)
    const shares = statements.map(({ values }) => ('of' in values ? values.count / values.of : 0))
    expect(shares.reduce((a, b) => a + b)).toBeCloseTo(1, 1)
  })

  it('tells a unit that prints nothing here from one that meets nothing at all', () => {
    expect(messages(told([stiff, soft], 1, 0b01))).toEqual(['nip.idle'])
    expect(messages(told([stiff, soft], 1, 0b00))).toEqual(['nip.nothing'])
  })

  it('tells dry ink from bare paper', () => {
    expect(messages(told([stiff, { ...soft, dryBefore: true }], 1, 0b11))[0]).toBe('nip.dry')
  })

  it('says so where the paper is torn', () => {
    const weak = { ...papers['weak uncoated'], surfaceStrength: 12 }
    expect(messages(told([stiff, soft], 0, 0b11, 'settled', weak))).toContain('nip.torn')
  })

  it('has words for every statement, with the values those words name', () => {
    const all = [
      told([stiff, soft], 0, 3),
      told([stiff, soft], 1, 3),
      told([stiff, soft], 1, 1),
      told([stiff, soft], 1, 0),
    ].flat()
    for (const { message, values } of all) {
      const named = [...nip[message].matchAll(/\{(\w+)/g)].map((match) => match[1])
      expect(Object.keys(values)).toEqual(expect.arrayContaining(named))
    }
  })

  it('counts small shares among more spots', () => {
    expect(spots(0.864)).toEqual({ count: 86, of: 100 })
    expect(spots(0.0042)).toEqual({ count: 4, of: 1000 })
    expect(spots(0)).toEqual({ count: 0, of: 100 })
  })
})
