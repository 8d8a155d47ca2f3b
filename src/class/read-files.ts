/**
 * Reads the files of a class one after the other, as many as there are, and lets the page have its turn in between. A
 * file that cannot be read is named with the reason, and the others count.
 */
import type { BoardSaid } from '../session/read-result.ts'
import { readHanded } from './read-handed.ts'
import type { Roll } from './roll.ts'

/** What of a file is needed. */
export interface HandedFile {
  readonly name: string
  /** bytes */
  readonly size: number
  text(): Promise<string>
}

export interface RefusedFile extends BoardSaid {
  readonly file: string
}

/** What of the page is needed. */
export interface ReadingPorts {
  /** ms, of any clock that goes on */
  readonly now: () => number
  /** settles once the page has had its turn */
  readonly pause: () => Promise<void>
  /** told before every pause and in the end */
  readonly tell: (read: number) => void
  readonly isCancelled: () => boolean
}

/** Bytes; an export of statements may hold a whole class. */
export const largestHanded = 64_000_000

/** ms of work between two turns of the page; chosen, so that no press of a key waits long. */
const longestTurn = 24
/** Files fetched at once. */
const atOnce = 16

export interface ReadFiles {
  /** how many were looked at, before the end or a stop */
  readonly read: number
  readonly refused: RefusedFile[]
  /** statements that told nothing of ours, in all the files together */
  readonly passedOver: number
}

/** Takes the files into the roll, and tells those that could not be read. */
export async function readFiles(
  files: readonly HandedFile[],
  roll: Roll,
  { now, pause, tell, isCancelled }: ReadingPorts,
): Promise<ReadFiles> {
  let read = 0
  let passedOver = 0
  const refused: RefusedFile[] = []
  let turn = now()
  for (let from = 0; from < files.length && !isCancelled(); from += atOnce) {
    const batch = files.slice(from, from + atOnce)
    const texts = await Promise.all(batch.map(fetchText))
    for (const [at, text] of texts.entries()) {
      if (isCancelled()) return { read, refused, passedOver }
      const file = batch[at].name
      const taken = typeof text === 'string' ? await take(text, file, roll) : text
      if (typeof taken === 'number') passedOver += taken
      else refused.push({ file, ...taken })
      read++
      if (now() - turn < longestTurn) continue
      tell(read)
      await pause()
      turn = now()
    }
  }
  return { read, refused, passedOver }
}

/** How many statements were passed over, or why the file was refused. */
async function take(text: string, file: string, roll: Roll): Promise<BoardSaid | number> {
  const read = await readHanded(text)
  if ('refused' in read) return read.refused
  for (const result of read.results) roll.add(result, file)
  return read.passedOver
}

async function fetchText(file: HandedFile): Promise<string | BoardSaid> {
  const { size } = file
  if (size > largestHanded) {
    const inMegabytes = (bytes: number) => Math.ceil(bytes / 1_000_000)
    const values = { size: inMegabytes(size), most: inMegabytes(largestHanded) }
    return { message: 'board.refused.large', values }
  }
  try {
    return await file.text()
  } catch (error) {
    // A file that was moved or that may not be read.
    if (error instanceof Error) return { message: 'board.refused.unreadable', values: {} }
    throw error
  }
}
