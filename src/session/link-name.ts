/**
 * Names inside a link. A plain name stands as it is, spaces as +. Any other name, such as one with a comma in it, stands
 * as ~ and its UTF-16 code units in base64 (RFC 4648, the alphabet safe in addresses), so that it holds none of the signs
 * that part a link, survives being escaped twice on its way, and is never longer than 108 characters for a legal name.
 */

/** Letters, digits, spaces, dots and hyphens; begins and ends with none of the last three, which mail programs cut off. */
const plain = /^[\p{L}\p{N}](?:[\p{L}\p{M}\p{N} .-]*[\p{L}\p{M}\p{N}])?$/u

/** The name as it stands in a link; `short` packs one that would be shorter so, as in a script of three bytes a letter. */
export function writeName(name: string, short = false): string {
  const packed = `~${pack(name)}`
  if (!plain.test(name)) return packed
  const spelled = encodeURIComponent(name).replaceAll('%20', '+')
  return short && packed.length < spelled.length ? packed : spelled
}

/** The name in a part of a link whose escapes have been taken back, or null where there is none. */
export function readName(text: string): string | null {
  if (!text.startsWith('~')) return text.replaceAll('+', ' ').trim() || null
  return unpack(text.slice(1))
}

function pack(name: string): string {
  const bytes = Array.from({ length: name.length }, (_, index) => {
    const code = name.charCodeAt(index)
    return String.fromCharCode(code >> 8, code & 255)
  })
  return btoa(bytes.join('')).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
}

function unpack(packed: string): string | null {
  if (!/^[\w-]+$/.test(packed) || packed.length % 4 === 1) return null
  const bytes = atob(packed.replaceAll('-', '+').replaceAll('_', '/'))
  if (bytes.length % 2 === 1) return null
  return Array.from({ length: bytes.length / 2 }, (_, index) =>
    String.fromCharCode((bytes.charCodeAt(2 * index) << 8) | bytes.charCodeAt(2 * index + 1)),
  ).join('')
}
