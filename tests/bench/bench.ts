/**
 * `npm run bench`: times what has to be fast, as ratios taken in one run, and prints them as a table.
 * `npm run bench -- growth` takes only the parts named: core, colour, orders; and of the built page blocks, frames, growth,
 * class.
 */
import type { BenchRow } from './bench-row.ts'
import { benchClass } from './class.ts'
import { benchColour } from './colour.ts'
import { benchCore } from './core.ts'
import { benchOrders } from './orders.ts'
import { benchBlocks, benchFrames, benchGrowth } from './page.ts'

const all: Record<string, () => Promise<BenchRow[]>> = {
  core: benchCore,
  colour: benchColour,
  orders: benchOrders,
  blocks: benchBlocks,
  frames: benchFrames,
  growth: benchGrowth,
  class: benchClass,
}
const named = process.argv.slice(2)
const parts = Object.entries(all).flatMap(([name, part]) => (named.length === 0 || named.includes(name) ? [part] : []))

/** Three figures that count, without exponents. */
function shown(value: number): string {
  return value >= 100 ? value.toFixed(0) : value.toPrecision(3)
}

for (const part of parts) {
  for (const { name, value, unit, note } of await part()) {
    console.log(`${name.padEnd(42)}${shown(value).padStart(9)} ${unit.padEnd(7)} ${note}`)
  }
}
