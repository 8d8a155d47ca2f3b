/** A short mark of texts: the same texts give the same mark, and others nearly always another. */

/** FNV-1a with 32 bits, by its published constants; as 8 hexadecimal digits. */
export function textMark(texts: readonly string[]): string {
  let hash = 0x811c9dc5
  for (const text of texts) {
    for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193)
  }
  return (hash >>> 0).toString(16).padStart(8, '0')
}
