/** Headings of tables that are saved as CSV; units are added behind them. */
export const tables = {
  'tables.unit': 'unit',
  'tables.ink': 'ink',
  'tables.tack': 'tack',
  'tables.tackUnits': 'tack units',
  'tables.film': 'film on the form roller',
  'tables.coverage': 'coverage',
  'tables.temperature': 'temperature',
  'tables.dampening': 'dampening (1 is normal)',
  'tables.soiled': 'foreign ink in the store at the start',
  'tables.foreign': 'foreign ink in the store',
  'tables.earlier': 'first ink',
  'tables.later': 'ink on it',
  'tables.massTrap': 'mass trap',
  'tables.patch': 'patch',
  'tables.paper': 'paper',
  'tables.filmOf': 'film of {ink}',
  'tables.torn': 'paper torn',
  'tables.density': 'density status {status}, {filter} filter, minus paper',
  'tables.lightness': 'L*',
  'tables.a': 'a*',
  'tables.b': 'b*',
} as const

export type TableKey = keyof typeof tables
