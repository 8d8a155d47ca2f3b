/**
 * The evidence a crew can come by: what it sees on the sheet and along the run, and what it may go and measure. A piece
 * of evidence is a kind, for measurements at a unit together with that unit; each piece holds one quantity or several.
 */
import type { DensityFilter } from '../colour/data/density-weights.ts'
import { densityFilters } from '../colour/density.ts'
import { repeatability } from '../physics/repeatability.ts'
import { patchOf, unitsIn } from '../press/patches.ts'
import type { Ink, SetUp } from '../press/setup.ts'

/** Read off the printed sheet: patches by eye beside the good sheet, counted in the loupe, with the densitometer. */
export const sheetEvidence = ['eye', 'loupe', 'strip'] as const
/** Everything that is seen without measuring at the press. */
export const seenEvidence = [...sheetEvidence, 'run chart'] as const
/** Measured at one unit. */
const unitEvidence = ['tackmeter', 'thermometer', 'film gauge'] as const
/** Measured once for the whole job. */
const jobEvidence = ['units', 'water gauge', 'speed counter', 'unit timing', 'pick test', 'absorption test'] as const

export const evidenceKinds = [...seenEvidence, ...unitEvidence, ...jobEvidence] as const
export type EvidenceKind = (typeof evidenceKinds)[number]

export interface Evidence {
  readonly kind: EvidenceKind
  /** by the order of the ticket, from 0; null where it concerns no single unit */
  readonly unit: number | null
}

/** A key for a piece of evidence, such as "thermometer 2"; units counted from 1. */
export function evidenceKey({ kind, unit }: Evidence): string {
  return unit === null ? kind : `${kind} ${unit + 1}`
}

/** The piece of evidence of a key; null where it is none. */
export function evidenceOf(key: string): Evidence | null {
  const place = / ([1-8])$/.exec(key)
  const kind = evidenceKinds.find((each) => each === (place ? key.slice(0, place.index) : key))
  if (kind === undefined || unitEvidence.some((each) => each === kind) !== (place !== null)) return null
  return { kind, unit: place && Number(place[1]) - 1 }
}

/** Every piece of evidence to be had on a job. A waterless press has no water to gauge. */
export function allEvidence({ inks, press }: SetUp): Evidence[] {
  const forJob = jobEvidence.filter((kind) => !(press.waterless && kind === 'water gauge'))
  return [
    ...seenEvidence.map((kind) => ({ kind, unit: null })),
    ...unitEvidence.flatMap((kind) => inks.map((_, unit) => ({ kind, unit }))),
    ...forJob.map((kind) => ({ kind, unit: null })),
  ]
}

/** How a quantity is shown. */
export type QuantityName =
  | 'lightness'
  | 'red-green'
  | 'yellow-blue'
  | 'missing'
  | 'torn'
  | 'density'
  | 'drift'
  | 'tack'
  | 'temperature'
  | 'film'
  | 'water'
  | 'place'
  | 'speed'
  | 'interval'
  | 'pick velocity'
  | 'absorbency'

/** One number of a piece of evidence. Patches and units are by the order of the ticket, whatever was loaded. */
export interface Quantity {
  readonly evidence: Evidence
  readonly name: QuantityName
  readonly patch?: number
  readonly filter?: DensityFilter
  readonly unit?: number
  /** how numbers of it compare: as they are, by their logarithm, or as a count (arc sine of the root) */
  readonly scale: 'plain' | 'ratio' | 'count'
  /** standard deviation of one reading on that scale */
  readonly repeats: number
  /** the same of what differs from sheet to sheet, or from sample to sample, and no second reading takes away */
  readonly varies: number
}

/** L*, a*, b* as an eye judges two patches laid side by side: chosen, as about one unit is just seen in good light. */
const eyeDeviation = 2
/** Density from one good sheet to another of a healthy run: chosen, as runs are commonly held to 0.1 either way. */
const sheetVariation = 0.05
/** Spots looked at in the loupe; chosen. A share p counted among n has the deviation 1 / (2 root n) on the count scale. */
export const spotsCounted = 100
/** What differs from sample to sample, in deviations of one reading: chosen, as large as the instrument's own noise. */
const sampleVariation = 1

/** The patches a crew reads: solids, overprints of two colours (black hides what lies under it), and all inks together. */
export function readPatches(inks: readonly Ink[]): number[] {
  const all = (1 << inks.length) - 1
  return Array.from({ length: all + 1 }, (_, patch) => patch).filter((patch) => {
    const units = unitsIn(patch, inks.length)
    const coloured = units.every((unit) => inks[unit].name !== 'black')
    return units.length === 1 || (units.length === 2 && coloured) || patch === all
  })
}

/** Every quantity of a job, in the order in which expected readings are kept. */
export function quantitiesOf(ticket: SetUp): Quantity[] {
  const inks = ticket.inks.length
  const all = (1 << inks) - 1
  const patches = readPatches(ticket.inks)
  const overprints = patches.filter((patch) => unitsIn(patch, inks).length > 1)
  const seen = (kind: EvidenceKind): Evidence => ({ kind, unit: null })
  const plain = (repeats: number, varies: number) => ({ scale: 'plain', repeats, varies }) as const
  const ratio = (share: number) => ({ scale: 'ratio', repeats: share, varies: share * sampleVariation }) as const
  const count = { scale: 'count', repeats: 0.5 / Math.sqrt(spotsCounted), varies: 0 } as const
  const eyeNames = ['lightness', 'red-green', 'yellow-blue'] as const
  const atUnits = (kind: EvidenceKind, name: QuantityName, repeats: number): Quantity[] =>
    ticket.inks.map((_, unit) => ({
      evidence: { kind, unit },
      name,
      unit,
      ...plain(repeats, repeats * sampleVariation),
    }))
  return [
    ...patches.flatMap((patch) =>
      eyeNames.map((name): Quantity => ({ evidence: seen('eye'), name, patch, ...plain(eyeDeviation, 0) })),
    ),
    ...overprints.map((patch): Quantity => ({ evidence: seen('loupe'), name: 'missing', patch, ...count })),
    { evidence: seen('loupe'), name: 'torn', patch: all, ...count },
    ...patches.flatMap((patch) =>
      densityFilters.map((filter): Quantity => {
        return {
          evidence: seen('strip'),
          name: 'density',
          patch,
          filter,
          ...plain(repeatability.density, sheetVariation),
        }
      }),
    ),
    ...ticket.inks.flatMap((_, unit) =>
      densityFilters.map((filter): Quantity => {
        const patch = patchOf([unit])
        return {
          evidence: seen('run chart'),
          name: 'drift',
          patch,
          filter,
          ...plain(repeatability.density, sheetVariation),
        }
      }),
    ),
    ...atUnits('tackmeter', 'tack', repeatability.tackmeter),
    ...atUnits('thermometer', 'temperature', repeatability.thermometer),
    ...atUnits('film gauge', 'film', repeatability.filmGauge),
    ...ticket.inks.map((_, unit): Quantity => {
      // Which ink is in which unit is seen, not measured; the deviation only keeps it a number like the others.
      return { evidence: seen('units'), name: 'place', unit, ...plain(0.1, 0) }
    }),
    ...(ticket.press.waterless ? [] : [waterQuantity]),
    { evidence: seen('speed counter'), name: 'speed', ...ratio(repeatability.timing) },
    { evidence: seen('unit timing'), name: 'interval', ...ratio(repeatability.timing) },
    { evidence: seen('pick test'), name: 'pick velocity', ...ratio(repeatability.pickVelocity) },
    { evidence: seen('absorption test'), name: 'absorbency', ...ratio(repeatability.absorption) },
  ]
}

const waterQuantity: Quantity = {
  evidence: { kind: 'water gauge', unit: null },
  name: 'water',
  scale: 'plain',
  repeats: repeatability.waterGauge,
  varies: repeatability.waterGauge * sampleVariation,
}

/** A number on the scale on which its noise is even. */
export function onScale(scale: Quantity['scale'], value: number): number {
  if (scale === 'plain') return value
  return scale === 'ratio' ? Math.log(value) : Math.asin(Math.sqrt(Math.min(1, Math.max(0, value))))
}

/** The other way round. */
export function offScale(scale: Quantity['scale'], value: number): number {
  if (scale === 'plain') return value
  return scale === 'ratio' ? Math.exp(value) : Math.sin(Math.min(Math.PI / 2, Math.max(0, value))) ** 2
}

/** Standard deviation on that scale of the mean of `readings` readings. */
export function deviationOf({ repeats, varies }: Quantity, readings = 1): number {
  return Math.hypot(repeats / Math.sqrt(readings), varies)
}
