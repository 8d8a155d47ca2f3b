/** Rows of a table in the order of one column: numbers by size, texts as the language sorts them, empty cells last. */
import type { Table } from '../../report/csv.ts'

export interface SortWish {
  readonly column: number
  readonly down: boolean
}

type Row = Table['rows'][number]

export function sortedRows(rows: readonly Row[], wish: SortWish | null, tag: string): readonly Row[] {
  if (!wish) return rows
  const { column, down } = wish
  const texts = new Intl.Collator(tag, { numeric: true })
  const isEmpty = (cell: Row[number]) => cell === null || cell === ''
  return [...rows].sort((one, other) => {
    const [a, b] = [one[column], other[column]]
    if (isEmpty(a) || isEmpty(b)) return Number(isEmpty(a)) - Number(isEmpty(b))
    const order = typeof a === 'number' && typeof b === 'number' ? a - b : texts.compare(String(a), String(b))
    return down ? -order : order
  })
}
