/** Text of the catalogue in which [[term|word]] marks a word to be explained. */
import type { TemplateResult } from 'lit'
import { html } from 'lit'
import { closing, opening, withoutMarks } from './kept-together.ts'
import './term-link.ts'

const mark = /\[\[([^|\]]+)\|([^\]]+)\]\]/

export function linkedText(text: string): (string | TemplateResult)[] {
  // split with two groups gives: text, term, word, text, term, word, ..., text
  const pieces = text.split(mark)
  return pieces.flatMap((piece, at): (string | TemplateResult)[] => {
    if (at % 3 === 0) return [withoutMarks(piece, at > 0, at < pieces.length - 1)]
    if (at % 3 === 2) return []
    const before = opening(withoutMarks(pieces[at - 1], at > 1, false))
    const after = closing(pieces[at + 2])
    return [html`<tack-term .term=${piece} .text=${pieces[at + 1]} .opens=${before} .closes=${after}></tack-term>`]
  })
}

/** The terms that a text marks. */
export function linkedTerms(text: string): string[] {
  return text.split(mark).filter((_, at) => at % 3 === 1)
}
