/**
 * The units a person may choose to read and type in. The set-up itself always holds m/s, degC and um; mathjs says how a
 * chosen unit follows from those, and is fetched only when another unit is chosen.
 */
import type { Quantity, UnitName } from './unit-names.ts'

/** A chosen unit follows from the set-up's own by `shown = scale * own + offset`. */
export interface Measure {
  unit: UnitName
  scale: number
  offset: number
}

export type Measures = Record<Quantity, Measure>

export const ownMeasures: Measures = {
  speed: own('m/s'),
  temperature: own('degC'),
  film: own('um'),
}

function own(unit: UnitName): Measure {
  return { unit, scale: 1, offset: 0 }
}

/** How the unit follows from the set-up's own, by mathjs. */
export async function measureIn(unit: UnitName): Promise<Measure> {
  if (Object.values(ownMeasures).some((measure) => measure.unit === unit)) return own(unit)
  const { convert } = await import('./unit-conversion.ts')
  const offset = convert(0, unit)
  return { unit, scale: convert(1, unit) - offset, offset }
}

export function toShown(value: number, { scale, offset }: Measure): number {
  return scale * value + offset
}

export function fromShown(value: number, { scale, offset }: Measure): number {
  return (value - offset) / scale
}
