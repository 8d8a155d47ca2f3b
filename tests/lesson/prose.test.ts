/** Markdown becomes plain pieces; whatever is not one of them becomes words. */
import { expect, test } from 'vitest'
import type { Block, Inline } from '../../src/lesson/prose.ts'
import { plainLine, prose, refusedIn } from '../../src/lesson/prose.ts'
import { glossary } from '../../src/words/en/glossary.ts'

const known = ['text', 'term', 'strong', 'emphasis', 'code', 'link', 'break']

/** All inline pieces of a text, nested ones too. */
function inlinesOf(blocks: readonly Block[]): Inline[] {
  return blocks.flatMap((block) => {
    switch (block.kind) {
      case 'paragraph':
      case 'heading':
        return deep(block.inner)
      case 'list':
        return block.items.flatMap(inlinesOf)
      case 'quote':
        return inlinesOf(block.inner)
      case 'table':
        return [block.head, ...block.rows].flat().flatMap(deep)
      case 'rule':
        return []
    }
  })
}

function deep(inlines: readonly Inline[]): Inline[] {
  return inlines.flatMap((each) => ('inner' in each ? [each, ...deep(each.inner)] : [each]))
}

test('marks terms of the glossary, in bold and in lists too, with their id', () => {
  const blocks = prose('The **tack** of a *film*.\n\n1. It was lifted\n2. wet on\n   wet', glossary)
  const terms = inlinesOf(blocks).flatMap((each) => (each.kind === 'term' ? [[each.term, each.text]] : []))
  expect(terms).toEqual([
    ['tack', 'tack'],
    ['ink-film', 'film'],
    ['lifting', 'lifted'],
    ['wet-on-wet', 'wet on\nwet'],
  ])
})

test('keeps paragraphs, lists, tables and quotes as such', () => {
  const kinds = prose('# A\n\nb\n\n- c\n\n> d\n\n---\n\n| e | f |\n|---|---|\n| 1 | 2 |\n').map(({ kind }) => kind)
  expect(kinds).toEqual(['heading', 'paragraph', 'list', 'quote', 'rule', 'table'])
})

test.each([
  '<script>alert(1)</script>',
  'a <img src=x onerror=alert(1)> b',
  '<div onclick="x">c</div>',
  '![picture](https://example.org/a.png)',
  '[run](javascript:alert(1))',
  '[data](data:text/html,x)',
  '[else](http://example.org)',
  '[ref][r]\n\n[r]: javascript:alert(1)',
])('%s becomes words and is refused by the checker', (markdown) => {
  const pieces = inlinesOf(prose(markdown, glossary))
  expect(pieces.every(({ kind }) => known.includes(kind))).toBe(true)
  expect(pieces.some(({ kind }) => kind === 'link')).toBe(false)
  expect(refusedIn(markdown).length).toBeGreaterThan(0)
})

test('a link that starts with https stays', () => {
  expect(inlinesOf(prose('[standard](https://example.org/a)'))).toContainEqual(
    expect.objectContaining({ kind: 'link', href: 'https://example.org/a' }),
  )
  expect(refusedIn('[standard](https://example.org/a)')).toEqual([])
})

test('says where in the text the refused piece stands', () => {
  expect(refusedIn('one **two** <b>three</b>').map(({ at }) => at)).toEqual([12, 20])
})

test('a name of several lines is one line, and keeps its no-break spaces', () => {
  expect(plainLine('Read the **film**\n  of 1\u00a0µm.\n\n- one\n- two\\\nlines')).toBe(
    'Read the film of 1\u00a0µm. one two lines',
  )
})
