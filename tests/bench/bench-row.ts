/** One line of the bench's table. */
export interface BenchRow {
  name: string
  value: number
  unit: string
  note: string
}
