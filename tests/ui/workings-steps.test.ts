import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { FilmAccount } from '../../src/press/account.ts'
import { nipAccount } from '../../src/press/account.ts'
import { runPress } from '../../src/press/run.ts'
import type { FilmPlace } from '../../src/ui/film-name.ts'
import { filmIndex } from '../../src/ui/film-name.ts'
import { breakable, pullWorkings } from '../../src/ui/workings-steps.ts'
import { anySetUp } from '../press/legal-setups.ts'

test('the law with its factors gives the very pulls that decided the nip, and no two films have one name in it', () => {
  fc.assert(
    fc.property(anySetUp(2, 4), fc.nat(), fc.nat(), (setUp, anyUnit, anyPatch) => {
      const run = runPress(setUp)
      const unit = anyUnit % setUp.inks.length
      const account = nipAccount(run, unit, anyPatch % (1 << setUp.inks.length))
      const letters = setUp.inks.map((_, index) => String(index))
      const indices: string[] = []
      const indexOf = (film: FilmAccount, place: FilmPlace) => {
        indices.push(filmIndex(film, place, letters))
        return indices[indices.length - 1]
      }
      const worked = pullWorkings(run, account, indexOf).map(({ pull }) => pull)
      expect(new Set(indices).size).toBe(worked.length)
      breakable(account).forEach(({ pull }, plane) => expect(worked[plane] / (pull ?? 0)).toBeCloseTo(1, 9))
    }),
    { numRuns: 30 },
  )
}, 30_000)
