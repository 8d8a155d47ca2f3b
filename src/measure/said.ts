import type { MeasureKey } from '../words/en/measure.ts'

/** Something to tell in words: which message of the catalogue, and the values it is filled with; a list is told item by item. */
export interface Said {
  readonly message: MeasureKey
  readonly values?: Readonly<Record<string, string | number | readonly Said[]>>
}

/** What was asked for makes no sense or cannot be known: why, and no number in its place. */
export interface Refused {
  readonly refused: Said
}

export function refuse(message: MeasureKey, values?: Said['values']): Refused {
  return { refused: values ? { message, values } : { message } }
}

export function isRefused(result: object): result is Refused {
  return 'refused' in result
}
