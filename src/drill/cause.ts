/** What can be wrong with a job, and what a learner may name as the cause of a bad sheet. */

export const faultKinds = [
  'order swapped',
  'tack too high',
  'tack too low',
  'film too heavy',
  'film too thin',
  'water too high',
  'unit too warm',
  'paper weak',
  'paper too closed',
  'speed too high',
  'interval too short',
  'soiled unit',
] as const
export type FaultKind = (typeof faultKinds)[number]

/** Kinds that go together; each family is drawn equally often. */
export const faultFamilies: readonly (readonly FaultKind[])[] = [
  ['order swapped'],
  ['tack too high', 'tack too low'],
  ['film too heavy', 'film too thin'],
  ['water too high'],
  ['unit too warm'],
  ['paper weak', 'paper too closed'],
  ['speed too high'],
  ['interval too short'],
  ['soiled unit'],
]

/** Kinds that belong to one unit; the others concern the paper or the whole press. */
const unitBound: ReadonlySet<FaultKind> = new Set([
  'order swapped',
  'tack too high',
  'tack too low',
  'film too heavy',
  'film too thin',
  'unit too warm',
  'soiled unit',
])

/**
 * A cause: the kind of fault, and the unit that has it, counted from 0 by the order of the job's ticket. Swapped inks
 * are that of `unit` and that of the next.
 */
export interface Cause {
  readonly kind: FaultKind
  readonly unit: number | null
}

/** A cause with its size, in the measure of its kind (see fault.ts). */
export interface Fault extends Cause {
  readonly size: number
}

/** A key for a cause, such as "unit too warm 2"; units counted from 1 as people do. */
export function causeKey({ kind, unit }: Cause): string {
  return unit === null ? kind : `${kind} ${unit + 1}`
}

/** The cause of a key; null where it is none. */
export function causeOf(key: string): Cause | null {
  const place = / ([1-8])$/.exec(key)
  const kind = faultKinds.find((each) => each === (place ? key.slice(0, place.index) : key))
  if (kind === undefined || unitBound.has(kind) !== (place !== null)) return null
  return { kind, unit: place && Number(place[1]) - 1 }
}

export function sameCause(one: Cause, other: Cause): boolean {
  return one.kind === other.kind && one.unit === other.unit
}

/** Every cause a press with this many units may have. */
export function allCauses(units: number): Cause[] {
  return faultKinds.flatMap((kind): Cause[] => {
    if (!unitBound.has(kind)) return [{ kind, unit: null }]
    const places = kind === 'order swapped' ? units - 1 : units
    return Array.from({ length: places }, (_, unit) => ({ kind, unit }))
  })
}
