/** `npm run bench`: times what has to be fast, as ratios taken in one run, and prints them as a table. */
import type { BenchRow } from './bench-row.ts'
import { benchColour } from './colour.ts'
import { benchCore } from './core.ts'
import { benchOrders } from './orders.ts'

const parts: (() => Promise<BenchRow[]>)[] = [benchCore, benchColour, benchOrders]

/** Three figures that count, without exponents. */
function shown(value: number): string {
  return value >= 100 ? value.toFixed(0) : value.toPrecision(3)
}

for (const part of parts) {
  for (const { name, value, unit, note } of await part()) {
    console.log(`${name.padEnd(42)}${shown(value).padStart(9)} ${unit.padEnd(7)} ${note}`)
  }
}
