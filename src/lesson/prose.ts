/**
 * Markdown of a lesson as a small tree of plain pieces. Only these pieces exist, so nothing else can reach the page:
 * markup, scripts, images and links that do not start with https: never become anything but words.
 */
import type { Token, Tokens } from 'marked'
import { lexer } from 'marked'
import type { ProblemSaid } from '../press/problem.ts'
import { said } from '../press/problem.ts'
import type { Glossary } from './language.ts'
import { termsIn } from './terms.ts'

export type Inline =
  | { kind: 'text'; text: string }
  /** a term of the glossary, as it stands in the text */
  | { kind: 'term'; text: string; term: string }
  | { kind: 'strong' | 'emphasis'; inner: Inline[] }
  | { kind: 'code'; text: string }
  | { kind: 'link'; href: string; inner: Inline[] }
  | { kind: 'break' }

export type Block =
  | { kind: 'paragraph'; inner: Inline[] }
  | { kind: 'heading'; level: number; inner: Inline[] }
  | { kind: 'list'; ordered: boolean; items: Block[][] }
  | { kind: 'quote'; inner: Block[] }
  | { kind: 'table'; head: Inline[][]; rows: Inline[][][] }
  | { kind: 'rule' }

/** The pieces of a Markdown text; terms of the glossary are marked where one is given. */
export function prose(markdown: string, glossary?: Glossary): Block[] {
  return lexer(markdown).flatMap((token) => block(token, glossary))
}

function block(token: Token, glossary: Glossary | undefined): Block[] {
  const inner = () => inlines((token as { tokens?: Token[] }).tokens ?? [], glossary)
  switch (token.type) {
    case 'space':
    case 'def':
      return []
    case 'heading':
      return [{ kind: 'heading', level: (token as Tokens.Heading).depth, inner: inner() }]
    case 'list': {
      const { ordered, items } = token as Tokens.List
      return [
        { kind: 'list', ordered, items: items.map((item) => item.tokens.flatMap((part) => block(part, glossary))) },
      ]
    }
    case 'blockquote':
      return [{ kind: 'quote', inner: (token as Tokens.Blockquote).tokens.flatMap((part) => block(part, glossary)) }]
    case 'table': {
      const { header, rows } = token as Tokens.Table
      const cells = (row: Tokens.TableCell[]) => row.map((cell) => inlines(cell.tokens, glossary))
      return [{ kind: 'table', head: cells(header), rows: rows.map(cells) }]
    }
    case 'hr':
      return [{ kind: 'rule' }]
    case 'paragraph':
    case 'text':
      return [{ kind: 'paragraph', inner: 'tokens' in token ? inner() : words(token.raw, glossary) }]
    default:
      return [{ kind: 'paragraph', inner: words('text' in token ? String(token.text) : token.raw, glossary) }]
  }
}

function inlines(tokens: readonly Token[], glossary: Glossary | undefined): Inline[] {
  return tokens.flatMap((token): Inline[] => {
    switch (token.type) {
      case 'strong':
        return [{ kind: 'strong', inner: inlines((token as Tokens.Strong).tokens, glossary) }]
      case 'em':
        return [{ kind: 'emphasis', inner: inlines((token as Tokens.Em).tokens, glossary) }]
      case 'codespan':
        return [{ kind: 'code', text: (token as Tokens.Codespan).text }]
      case 'br':
        return [{ kind: 'break' }]
      case 'link': {
        const { href, tokens: inner } = token as Tokens.Link
        // Terms within a link stay plain: one thing to press at a time.
        return isSafeLink(href) ? [{ kind: 'link', href, inner: inlines(inner, undefined) }] : inlines(inner, glossary)
      }
      case 'text':
      case 'escape':
        return words((token as Tokens.Text).text, glossary)
      default:
        return words(token.raw, glossary)
    }
  })
}

function isSafeLink(href: string): boolean {
  return /^https:\/\/[^\s/]/.test(href)
}

/** Plain words, cut where a term begins and ends. */
function words(text: string, glossary: Glossary | undefined): Inline[] {
  const pieces: Inline[] = []
  let done = 0
  for (const { term, at, length } of glossary ? termsIn(text, glossary) : []) {
    if (at > done) pieces.push({ kind: 'text', text: text.slice(done, at) })
    pieces.push({ kind: 'term', text: text.slice(at, at + length), term })
    done = at + length
  }
  if (done < text.length) pieces.push({ kind: 'text', text: text.slice(done) })
  return pieces
}

/** What a lesson's Markdown may not hold, with its place in the text. */
export function refusedIn(markdown: string): { at: number; said: ProblemSaid }[] {
  const found: { at: number; said: ProblemSaid }[] = []
  let from = 0
  const look = (token: Token) => {
    const at = Math.max(0, markdown.indexOf(token.raw, from))
    if (token.type === 'html') {
      found.push({ at, said: said('checker.markup', { word: token.raw.trim().slice(0, 30) }) })
    } else if (token.type === 'image') {
      found.push({ at, said: said('checker.image') })
    } else if (token.type === 'link' && !isSafeLink((token as Tokens.Link).href)) {
      found.push({ at, said: said('checker.link', { word: (token as Tokens.Link).href.slice(0, 40) }) })
    }
    const tokens = token as {
      tokens?: Token[]
      items?: Token[]
      header?: { tokens: Token[] }[]
      rows?: { tokens: Token[] }[][]
    }
    const children = [tokens.tokens, tokens.items, ...(tokens.header ?? []).map((cell) => cell.tokens)]
    from = at
    for (const child of [...children.flat(), ...(tokens.rows ?? []).flat().flatMap((cell) => cell.tokens)]) {
      if (child) look(child)
    }
  }
  for (const token of lexer(markdown)) look(token)
  return found
}

/** Everything as plain words in one line, for names that are read out or sent on. */
export function plainLine(markdown: string): string {
  return linesIn(prose(markdown))
    .map((inner) => inner.map(plain).join(''))
    .join(' ')
    .replace(/ *\n */g, ' ')
}

function plain(piece: Inline): string {
  if (piece.kind === 'break') return ' '
  return 'inner' in piece ? piece.inner.map(plain).join('') : piece.text
}

/** What stands in the blocks, line by line. */
export function linesIn(blocks: readonly Block[]): Inline[][] {
  return blocks.flatMap((piece): Inline[][] => {
    switch (piece.kind) {
      case 'paragraph':
      case 'heading':
        return [piece.inner]
      case 'list':
        return piece.items.flatMap(linesIn)
      case 'quote':
        return linesIn(piece.inner)
      case 'table':
        return [...piece.head, ...piece.rows.flat()]
      case 'rule':
        return []
    }
  })
}
