/** What of a browser's storage is needed for a visit, and how it is touched where it may be blocked or full. */
export type ShelfStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>

/** What `touch` gives, in a list of one; null where there is no storage, or where it is blocked or full and throws. */
export function touched<Given>(
  storage: ShelfStorage | null,
  touch: (storage: ShelfStorage) => Given,
): readonly [Given] | null {
  if (!storage) return null
  try {
    return [touch(storage)]
  } catch (error) {
    if (!(error instanceof DOMException)) throw error
    return null
  }
}

/** Undefined where it is no JSON. */
export function jsonIn(text: string | null): unknown {
  try {
    return text === null ? undefined : JSON.parse(text)
  } catch (error) {
    if (error instanceof SyntaxError) return undefined
    throw error
  }
}

/** 32 bits (FNV-1a, Fowler, Noll and Vo) twice over, so that no name stands in the storage in plain letters. */
export function shortOf(text: string): string {
  return [0x811c9dc5, 0x9747b28c]
    .map((start) => {
      let hash = start
      for (const sign of text) hash = Math.imul(hash ^ (sign.codePointAt(0) ?? 0), 0x01000193)
      return (hash >>> 0).toString(36)
    })
    .join('')
}
