/** A patch passes one unit: the films on it are thinned by what is lifted, and the new film is laid on top. */
import type { Parting } from '../physics/nip.ts'
import type { Unit } from './line.ts'
import type { Sheet } from './sheet.ts'
import type { Stack } from './stack.ts'
import { leavingShare } from './stack.ts'

/**
 * Writes `patch` of the sheet after the unit from patch `from` of the sheet before it. `blanket` holds the um of each
 * ink on the blanket from `at` on; `film` is their sum. What leaves is exactly what the blanket keeps (see liftedInk).
 */
export function passPatch(
  unit: Unit,
  before: Sheet,
  from: number,
  after: Sheet,
  patch: number,
  stack: Stack,
  parting: Parting,
  blanket: Float64Array,
  at: number,
  film: number,
): void {
  const { inks } = before
  const { contact, torn } = parting
  const lifting = contact * (1 - torn) * (1 - parting.blanketBreaks)
  let weightBelow = 0
  for (let layer = 0; layer < before.units; layer++) {
    const source = from * before.units + layer
    const target = patch * after.units + layer
    const weight = stack.weights[layer]
    const thickness = before.thickness[source]
    const leaves =
      contact * torn +
      (weight > 0
        ? (lifting * (weightBelow + weight * leavingShare(thickness, before.held[source]))) / stack.weight
        : 0)
    weightBelow += weight
    after.thickness[target] = thickness * (1 - leaves)
    // Held ink leaves only with the paper itself.
    after.held[target] = before.held[source] * (1 - contact * torn)
    for (let ink = 0; ink < inks; ink++) {
      after.amounts[target * inks + ink] = before.amounts[source * inks + ink] * (1 - leaves)
    }
  }
  const top = patch * after.units + unit.index
  after.thickness[top] = film * parting.taken
  after.held[top] = parting.held
  for (let ink = 0; ink < inks; ink++) after.amounts[top * inks + ink] = blanket[at + ink] * parting.taken
}
