/** A draft as it is kept: the text of a file, and when it was written. */
import * as v from 'valibot'

const recordSchema = v.object({ savedAt: v.number(), file: v.string() })
export type DraftRecord = v.InferOutput<typeof recordSchema>

export function writeRecord({ savedAt, file }: DraftRecord): string {
  return JSON.stringify({ savedAt, file })
}

/** Null where the text is none, as after a crash in the middle of writing. */
export function readRecord(text: string): DraftRecord | null {
  try {
    const result = v.safeParse(recordSchema, JSON.parse(text))
    return result.success ? result.output : null
  } catch (error) {
    if (error instanceof SyntaxError) return null
    throw error
  }
}
