/** A beginner looks for a word by what stands on the page, or by what it is like. */
import { describe, expect, test } from 'vitest'
import { findTerms } from '../../src/ui/glossary/find-terms.ts'
import type { GlossaryTerm } from '../../src/words/glossary-term.ts'
import { glossary as english } from '../../src/words/en/glossary.ts'
import { glossary as spanish } from '../../src/words/es/glossary.ts'

const found = (glossary: Record<string, GlossaryTerm>, typed: string) => findTerms(glossary, typed).map(([id]) => id)

test.each([
  ['its name', 'mass trap', 'mass-trap'],
  ['another form of it', 'back-trapping', 'lifting'],
  ['what it is like', 'Sticky', 'tack'],
  ['a word of its explanation alone', 'honey', 'ink'],
])('an English word is found by %s', (_, typed, id) => {
  expect(found(english, typed)).toContain(id)
})

test.each([
  ['its name without accents', 'pelicula', 'ink-film'],
  ['the word the bench draws it with', 'escalera', 'tack-ladder'],
  ['what it is like', 'lupa', 'loupe'],
])('a Spanish word is found by %s', (_, typed, id) => {
  expect(found(spanish, typed)).toContain(id)
})

test('what stands on the page is found, and not everything that speaks of it', () => {
  expect(found(english, 'stair')).toEqual(['tack-ladder', 'tack-step'])
})

test('a name is not drowned in explanations that use it', () => {
  expect(found(english, 'mass trap')).toEqual(['mass-trap'])
})

test('nothing typed shows every word, and nonsense none', () => {
  expect(found(english, '  ')).toHaveLength(Object.keys(english).length)
  expect(found(english, 'qwxz')).toEqual([])
})

describe.each<[string, Record<string, GlossaryTerm>]>([
  ['English', english],
  ['Spanish', spanish],
])('%s', (_, glossary) => {
  test('no everyday word is the name of a term, which a lesson could then not use freely', () => {
    const names = Object.values(glossary).flatMap(({ term, forms }) => [term, ...forms])
    const also = Object.values(glossary).flatMap(({ also: words = [] }) => words)
    expect(also.filter((word) => names.includes(word))).toEqual([])
  })
})
