/** What of a run is drawn together on one scale: the lines of each chart, with their names. */
import type { AimedPatch } from '../../measure/order-colours.ts'
import { aimedColours } from '../../measure/order-colours.ts'
import { pairs } from '../../press/readings.ts'
import type { RunRow } from '../../measure/run-rows.ts'
import type { PrintedRun } from '../../session/run-desk.ts'
import { say, sayName } from '../say.ts'

/** `Row` is what is read of one sheet. */
export interface RunLine<Row = RunRow> {
  label: string
  /** as written at its end, where the chart's title says the rest */
  short?: string
  /** in the unit of the chart's axis */
  value: (row: Row) => number
}

export const patchGroups = ['all', 'solids', 'overprints'] as const
export type PatchGroup = (typeof patchGroups)[number]

/** %: foreign ink by unit. */
export function contaminationLines({ setUp }: PrintedRun): RunLine[] {
  return setUp.inks.map(({ name }, unit) => ({ label: name, value: ({ contamination }) => 100 * contamination[unit] }))
}

/** %: mass trap of unit `later` on each before it. */
export function trapLines({ setUp }: PrintedRun, later: number): RunLine[] {
  const { inks } = setUp
  return pairs(inks.length).flatMap((pair, index) =>
    pair[1] === later
      ? [
          {
            label: say('run.onInk', { later: inks[later].name, earlier: inks[pair[0]].name }),
            short: say('run.onShort', { earlier: inks[pair[0]].name }),
            value: ({ massTraps }: RunRow) => 100 * massTraps[index],
          },
        ]
      : [],
  )
}

/** dE00 of the patches that have an aim; none where none has. */
export function colourLines({ setUp }: PrintedRun, group: PatchGroup): RunLine[] {
  const patches = patchesOf(setUp)
  if (patches.length === 0) return []
  if (group === 'all') {
    return [
      { label: say('run.mean'), value: ({ differences }) => mean(differences) },
      { label: say('run.worst'), value: ({ differences }) => Math.max(...differences) },
    ]
  }
  const inks = group === 'solids' ? 1 : 2
  return patches.flatMap((patch, index) =>
    patch.inks.length === inks
      ? [{ label: patchName(patch, setUp), value: ({ differences }: RunRow) => differences[index] }]
      : [],
  )
}

const known = new WeakMap<PrintedRun['setUp'], AimedPatch[]>()

/** The patches that a row's differences belong to. */
export function patchesOf(setUp: PrintedRun['setUp']): AimedPatch[] {
  let patches = known.get(setUp)
  if (!patches) known.set(setUp, (patches = aimedColours(setUp)?.patches ?? []))
  return patches
}

export function patchName({ inks }: AimedPatch, setUp: PrintedRun['setUp']): string {
  return inks.map((ink) => sayName(setUp.inks[ink].name)).join(' + ')
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}

/** The row read nearest to a sheet. */
export function nearestRow(rows: readonly RunRow[], sheet: number): RunRow {
  return rows.reduce((near, row) => (Math.abs(row.sheet - sheet) < Math.abs(near.sheet - sheet) ? row : near))
}
