/** Brings the data of an older file up to the present version, one step for each version it is behind. */

export type Json = Record<string, unknown>

/** By version: makes data of the next version from data of this one. It is handed a copy and may be handed anything. */
export type Steps = Readonly<Partial<Record<number, (old: Json) => Json>>>

/** The data at version `to`, or null where no chain of steps leads there. A step's result is given its version here. */
export function migrate(data: Json, from: number, to: number, steps: Steps): Json | null {
  let present = structuredClone(data)
  for (let version = from; version < to; version++) {
    const step = steps[version]
    if (!step) return null
    present = { ...step(present), version: version + 1 }
  }
  return present
}
