/** A lesson's Markdown on the page: the plain pieces of lesson/prose.ts as elements, and nothing else. */
import type { TemplateResult } from 'lit'
import { html } from 'lit'
import type { Glossary } from '../../lesson/language.ts'
import type { Block, Inline } from '../../lesson/prose.ts'
import { linesIn, prose } from '../../lesson/prose.ts'
import { closing, opening, unitsKept, withoutMarks } from '../kept-together.ts'
import '../term-link.ts'

type Piece = TemplateResult | string

/** Whole paragraphs; terms can be pressed where a glossary is given. */
export function proseView(markdown: string, glossary?: Glossary): Piece[] {
  return prose(markdown, glossary).map((piece) => block(piece, glossary))
}

/** Everything in one line, for labels. */
export function proseLine(markdown: string): Piece[] {
  return linesIn(prose(markdown)).flatMap((inner, at) => [at > 0 ? ' ' : '', ...inlines(inner)])
}

function block(piece: Block, glossary?: Glossary): Piece {
  switch (piece.kind) {
    case 'paragraph':
      return html`<p>${inlines(piece.inner, glossary)}</p>`
    case 'heading':
      return html`<h4>${inlines(piece.inner, glossary)}</h4>`
    case 'list': {
      const items = piece.items.map((item) => html`<li>${item.map((each) => itemBlock(each, glossary))}</li>`)
      return piece.ordered
        ? html`<ol class="prose">
            ${items}
          </ol>`
        : html`<ul class="prose">
            ${items}
          </ul>`
    }
    case 'quote':
      return html`<blockquote>${piece.inner.map((each) => block(each, glossary))}</blockquote>`
    case 'table':
      return html`<table>
        <thead>
          <tr>
            ${piece.head.map((cell) => html`<th scope="col">${inlines(cell, glossary)}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${piece.rows.map(
            (row) =>
              html`<tr>
                ${row.map((cell) => html`<td>${inlines(cell, glossary)}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>`
    case 'rule':
      return html`<hr />`
  }
}

/** A short item stands without a paragraph of its own. */
function itemBlock(piece: Block, glossary?: Glossary): Piece {
  return piece.kind === 'paragraph' ? html`<span>${inlines(piece.inner, glossary)}</span>` : block(piece, glossary)
}

function inlines(pieces: readonly Inline[], glossary?: Glossary): Piece[] {
  return pieces.map((piece, at) => inline(piece, glossary, pieces[at - 1], pieces[at + 1]))
}

/** A term takes the marks that stand close to it out of the plain text on either side. */
function inline(piece: Inline, glossary?: Glossary, before?: Inline, after?: Inline): Piece {
  switch (piece.kind) {
    case 'text':
      return unitsKept(withoutMarks(piece.text, before?.kind === 'term', after?.kind === 'term'))
    case 'term':
      return html`<tack-term
        .term=${piece.term}
        .text=${piece.text}
        .opens=${before?.kind === 'text' ? opening(before.text) : ''}
        .closes=${after?.kind === 'text' ? closing(after.text) : ''}
        .entry=${glossary?.[piece.term]}
      ></tack-term>`
    case 'strong':
      return html`<strong>${inlines(piece.inner, glossary)}</strong>`
    case 'emphasis':
      return html`<em>${inlines(piece.inner, glossary)}</em>`
    case 'code':
      return html`<code>${piece.text}</code>`
    case 'link':
      return html`<a href=${piece.href} target="_blank" rel="noopener noreferrer">${inlines(piece.inner, glossary)}</a>`
    case 'break':
      return html`<br />`
  }
}
