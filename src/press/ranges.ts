/** What a set-up may hold: the legal range of every number, in the unit named, with the step of its control. */

export interface Range {
  least: number
  most: number
  /** as written in messages and files; null for a plain number */
  unit: 'tack units' | 'um' | 'degC' | 'm/s' | 's' | '1/um' | null
  /** step of a control, in the same unit */
  step: number
  whole?: true
}

/** Wide enough for anything the trade runs, narrow enough that every law of the model still means something. */
export const ranges = {
  tack: { least: 2, most: 40, unit: 'tack units', step: 0.5 },
  film: { least: 1, most: 8, unit: 'um', step: 0.1 },
  coverage: { least: 0.02, most: 1, unit: null, step: 0.01 },
  soiled: { least: 0, most: 0.5, unit: null, step: 0.01 },
  temperature: { least: 10, most: 60, unit: 'degC', step: 0.5 },
  dampening: { least: 0, most: 2, unit: null, step: 0.05 },
  speed: { least: 0.3, most: 20, unit: 'm/s', step: 0.1 },
  /** the published 0.03 to 3 s between inks, and what the slowest legal press needs */
  interval: { least: 0.03, most: 10, unit: 's', step: 0.01 },
  surfaceStrength: { least: 5, most: 200, unit: 'tack units', step: 1 },
  contactRate: { least: 0.1, most: 10, unit: '1/um', step: 0.1 },
  holdLimit: { least: 0.1, most: 10, unit: 'um', step: 0.1 },
  freeSplit: { least: 0.1, most: 0.6, unit: null, step: 0.01 },
  settingGain: { least: 0, most: 2, unit: null, step: 0.05 },
  settingTime: { least: 0.05, most: 10, unit: 's', step: 0.05 },
  evenness: { least: 2, most: 8, unit: null, step: 0.1 },
  absorbency: { least: 0.25, most: 4, unit: null, step: 0.05 },
  wetLoss: { least: 0, most: 0.2, unit: null, step: 0.01 },
  sheet: { least: 1, most: 100_000, unit: null, step: 1, whole: true },
  seed: { least: 0, most: 0xffffffff, unit: null, step: 1, whole: true },
} satisfies Record<string, Range>

export type RangeName = keyof typeof ranges

/** How many inks a press may carry. */
export const inkCount = { least: 2, most: 8 }
/** Characters in a name. */
export const longestName = 40

/** A range as the values of a message. */
export function rangeSaid(name: RangeName): Record<'whole' | 'unit', string> & Record<'least' | 'most', number> {
  const { least, most, unit, whole }: Range = ranges[name]
  return { least, most, unit: unit ?? 'none', whole: whole ? 'yes' : 'no' }
}

/** "2 to 40 tack units", for messages. */
export function allowed(name: RangeName): string {
  const range: Range = ranges[name]
  const numbers = `${String(range.least)} to ${String(range.most)}`
  return [range.whole ? 'whole numbers' : 'numbers', 'from', numbers, range.unit].filter(Boolean).join(' ')
}
