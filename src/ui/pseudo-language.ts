/**
 * Made-up languages for tests, from the English catalogue: every text in brackets, its letters accented, half as long
 * again and more; and the same from right to left. Nobody can choose them in the page.
 */
import { en } from '../words/en.ts'
import type { Translated } from '../words/translated.ts'

type Words = Translated<typeof en>

const accents: Readonly<Record<string, string>> = {
  a: 'á',
  e: 'é',
  i: 'í',
  o: 'ó',
  u: 'ú',
  n: 'ñ',
  c: 'ç',
  A: 'Á',
  E: 'É',
  O: 'Ó',
}

export function pseudoWords(): Words {
  return Object.fromEntries(Object.entries<string>(en).map(([key, text]) => [key, pseudo(key, text)])) as Words
}

/** Values, choices and marks of terms stay as they are: only plain text outside of all braces is changed. */
function pseudo(key: string, text: string): string {
  // Names are values of other messages, which are in brackets already.
  if (key.startsWith('name.')) return text
  const accented = outsideBraces(text, (plain) => plain.replaceAll(/[aeiouncAEO]/g, (letter) => accents[letter]))
  return `⟦${accented}${' ·'.repeat(Math.ceil(text.replaceAll(/\{.*\}/gs, '').length / 2))}⟧`
}

function outsideBraces(text: string, change: (plain: string) => string): string {
  let depth = 0
  return text
    .split(/([{}]|\[\[[^|\]]+\|)/)
    .map((piece) => {
      if (piece === '{') depth += 1
      else if (piece === '}') depth -= 1
      else if (depth === 0 && !piece.startsWith('[[')) return change(piece)
      return piece
    })
    .join('')
}
