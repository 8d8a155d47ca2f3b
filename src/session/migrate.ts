/** Brings the data of an older file up to the present version, one step for each version it is behind. */

export type Json = Record<string, unknown>

/** By version: makes data of the next version from data of this one. It is handed a copy and may be handed anything. */
export type Steps = Readonly<Partial<Record<number, (old: Json) => Json>>>

/** The data at version `to`, or null where no chain of steps leads there. A step's result is given its version here. */
export function migrate(data: Json, from: number, to: number, steps: Steps): Json | null {
  // Only what a step may change is copied: copying what is nested some thousand levels deep would throw.
  if (from === to) return data
  let present = copied(data)
  if (!present) return null
  for (let version = from; version < to; version++) {
    const step = steps[version]
    if (!step) return null
    present = { ...step(present), version: version + 1 }
  }
  return present
}

/** Null where the data are nested deeper than any file of ours. */
function copied(data: Json): Json | null {
  try {
    return structuredClone(data)
  } catch (error) {
    if (error instanceof RangeError) return null
    throw error
  }
}
