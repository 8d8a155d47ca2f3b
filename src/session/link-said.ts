/** What is to be told about a link: a message of the catalogue and its values. */
import type { LinkKey } from '../words/en/link.ts'

export interface LinkSaid {
  readonly message: LinkKey
  readonly values: Readonly<Record<string, string | number>>
}

export type Report = (message: LinkKey, values?: LinkSaid['values']) => void

/** Characters of a wrong value that are told; enough to find it again. */
const longestShown = 40

/** What the link gives, shortly and on one line. */
export function shown(text: string): string {
  const line = text.replace(/[\p{Cc}\u2028\u2029\ufffd]/gu, ' ').trim()
  return line.length > longestShown ? `${line.slice(0, longestShown)}...` : line
}
