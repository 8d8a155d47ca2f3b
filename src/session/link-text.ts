/**
 * The text of a link taken apart: `#word=value&word=value`. Lists are joined by commas; what belongs to one thing is
 * joined by colons, `cyan:14:film3.5`. Whatever mail programs, chats and address bars do to a link is taken back first.
 */
import { closestOf } from './closest.ts'
import type { Report } from './link-said.ts'
import { shown } from './link-said.ts'

/** Characters that are read of a link; one of ours is shorter by far, even where each sign has been escaped on the way. */
const longestRead = 8000

/** Escapes are taken back at most so often; each program a link passes through may add one layer. */
const mostLayers = 3

/** Takes back escapes; what cannot be one is left as it stands. */
function unescaped(text: string): string {
  let plain = text.replaceAll('&amp;', '&')
  for (let layer = 0; layer < mostLayers && /%[0-9a-f]{2}/i.test(plain); layer++) {
    plain = plain.replace(/(?:%[0-9a-f]{2})+/gi, (escapes) => decoded(escapes))
  }
  return plain
}

function decoded(escapes: string): string {
  const bytes = Uint8Array.from(escapes.slice(1).split('%'), (digits) => parseInt(digits, 16))
  // Bytes that are no text become the sign for that, and so a value that is refused in words.
  return new TextDecoder().decode(bytes)
}

/** The words of a link and their values; null where the text is no link of ours but, say, the name of a place on the page. */
export function takeApart(text: string, words: readonly string[], report: Report): Map<string, string> | null {
  const given = text.trim().replace(/^#/, '')
  if (given.length > longestRead) report('link.tooLong', { length: given.length, most: longestRead })
  const plain = unescaped(given.slice(0, longestRead))
  if (!plain.includes('=')) return null
  const pairs = new Map<string, string>()
  for (const pair of plain.split('&')) {
    if (pair.trim() === '') continue
    const [, name, value] = /^([^=]*)=?(.*)$/s.exec(pair) as unknown as [string, string, string]
    const word = name.trim().toLowerCase()
    if (!words.includes(word)) {
      const allowed = words.join(', ')
      report('link.unknownWord', { given: shown(name), near: closestOf(word, words), allowed })
    } else if (pairs.has(word)) report('link.twice', { word })
    else pairs.set(word, value.trim())
  }
  return pairs
}

/** The things of a list; none from an empty text. */
export function listed(text: string): string[] {
  return text.split(',').flatMap((item) => item.trim() || [])
}
