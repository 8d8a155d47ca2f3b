import { describe, expect, test } from 'vitest'
import type { FilmAccount, NipAccount } from '../../src/press/account.ts'
import { pullScale } from '../../src/ui/pull-scale.ts'

/** A nip with films of these pulls, as far as a scale looks at it. */
function nip(...pulls: (number | null)[]): NipAccount {
  const [blanket, ...films] = pulls.map((pull) => ({ thickness: 1, pull }) as FilmAccount)
  return { blanket, films } as unknown as NipAccount
}

describe('the scale of the pulls', () => {
  test('is the same for a strong and a weak set-up of usual inks', () => {
    expect(pullScale([nip(13.1), nip(13.1, 18.6)])).toEqual({ end: 25, marks: [0, 10, 20] })
    expect(pullScale([nip(7.5), nip(15, 10.7)])).toEqual(pullScale([nip(15), nip(7.5, 21.3)]))
  })

  test('holds the strongest film of any unit, with marks within it', () => {
    expect(pullScale([nip(8), nip(26, 3), nip(5, null)])).toEqual({ end: 50, marks: [0, 20, 40] })
    expect(pullScale([nip(900)]).end).toBe(900)
  })

  test('leaves out a film that is not there', () => {
    const gone = { ...nip(8), films: [{ thickness: 0, pull: 99 } as FilmAccount] }
    expect(pullScale([gone]).end).toBe(25)
  })
})
