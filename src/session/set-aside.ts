/**
 * Work kept in this browser that can no longer be read, as after a damaged disk or from a newer program: its text is put
 * together under one key before anything is written over it, so that it can still be had. What can be read stays in use.
 */
import { isReadable as isDrillAtWork, workKey } from './drill-kept.ts'
import { readEntry, recordKey } from './drill-record.ts'
import { Learning, lessonKey } from './learning.ts'

export type WorkStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>

const asideKey = 'tackstair unreadable work'

/** Moves aside what cannot be read; returns whether there was any. A storage that takes nothing is left as it is. */
export function setUnreadableAside(storage: WorkStorage): boolean {
  return attempt(() => {
    const moves = [
      ...moveList(storage, recordKey, (entry) => readEntry(entry).length > 0),
      ...moveList(storage, workKey, isDrillAtWork),
      ...new Learning(storage).unreadable.map((lesson) => ({ key: lessonKey(lesson), rest: null })),
    ]
    for (const { key, rest } of moves) {
      storage.setItem(asideKey, `${storage.getItem(asideKey) ?? ''}${key}\n${storage.getItem(key) ?? ''}\n\n`)
      if (rest === null) storage.removeItem(key)
      else storage.setItem(key, rest)
    }
    return moves.length > 0
  }, false)
}

/** What was moved aside, each text below the name it had; null where there is nothing. */
export function workSetAside(storage: WorkStorage): string | null {
  return attempt(() => storage.getItem(asideKey), null)
}

export function dropWorkSetAside(storage: WorkStorage): void {
  attempt(() => storage.removeItem(asideKey), undefined)
}

/** Nothing where the list under this key can be read whole; else what stays of it. */
function moveList(
  storage: WorkStorage,
  key: string,
  isReadable: (entry: unknown) => boolean,
): { key: string; rest: string | null }[] {
  const text = storage.getItem(key)
  if (text === null) return []
  const list = listIn(text)
  if (list?.every(isReadable)) return []
  return [{ key, rest: list && JSON.stringify(list.filter(isReadable)) }]
}

function listIn(text: string): unknown[] | null {
  try {
    const kept: unknown = JSON.parse(text)
    return Array.isArray(kept) ? kept : null
  } catch (error) {
    if (error instanceof SyntaxError) return null
    throw error
  }
}

function attempt<Result>(touch: () => Result, otherwise: Result): Result {
  try {
    return touch()
  } catch (error) {
    if (error instanceof DOMException) return otherwise
    throw error
  }
}
