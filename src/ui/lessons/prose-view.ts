/** A lesson's Markdown on the page: the plain pieces of lesson/prose.ts as elements, and nothing else. */
import type { TemplateResult } from 'lit'
import { html } from 'lit'
import type { Glossary } from '../../lesson/language.ts'
import type { Block, Inline } from '../../lesson/prose.ts'
import { linesIn, prose } from '../../lesson/prose.ts'
import '../term-link.ts'

type Piece = TemplateResult | string

/** Whole paragraphs; terms can be pressed where a glossary is given. */
export function proseView(markdown: string, glossary?: Glossary): Piece[] {
  return prose(markdown, glossary).map((piece) => block(piece, glossary))
}

/** Everything in one line, for labels. */
export function proseLine(markdown: string): Piece[] {
  return linesIn(prose(markdown)).flatMap((inner, at) => [at > 0 ? ' ' : '', ...inner.map((each) => inline(each))])
}

function block(piece: Block, glossary?: Glossary): Piece {
  switch (piece.kind) {
    case 'paragraph':
      return html`<p>${piece.inner.map((each) => inline(each, glossary))}</p>`
    case 'heading':
      return html`<h4>${piece.inner.map((each) => inline(each, glossary))}</h4>`
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
            ${piece.head.map((cell) => html`<th scope="col">${cell.map((each) => inline(each, glossary))}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${piece.rows.map(
            (row) =>
              html`<tr>
                ${row.map((cell) => html`<td>${cell.map((each) => inline(each, glossary))}</td>`)}
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
  return piece.kind === 'paragraph'
    ? html`<span>${piece.inner.map((each) => inline(each, glossary))}</span>`
    : block(piece, glossary)
}

function inline(piece: Inline, glossary?: Glossary): Piece {
  switch (piece.kind) {
    case 'text':
      return piece.text
    case 'term':
      return html`<tack-term .term=${piece.term} .text=${piece.text} .entry=${glossary?.[piece.term]}></tack-term>`
    case 'strong':
      return html`<strong>${piece.inner.map((each) => inline(each, glossary))}</strong>`
    case 'emphasis':
      return html`<em>${piece.inner.map((each) => inline(each, glossary))}</em>`
    case 'code':
      return html`<code>${piece.text}</code>`
    case 'link':
      return html`<a href=${piece.href} target="_blank" rel="noopener noreferrer"
        >${piece.inner.map((each) => inline(each, glossary))}</a
      >`
    case 'break':
      return html`<br />`
  }
}
