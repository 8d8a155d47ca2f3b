/** Finds the terms of the glossary, and their inflections and synonyms, in a text. */
import type { Glossary } from './language.ts'

export interface TermUse {
  /** id of the term */
  term: string
  /** the words as they stand in the text */
  words: string
  /** characters from the start of the text */
  at: number
  length: number
}

interface Finder {
  pattern: RegExp
  termOf: Map<string, string>
}

const finders = new WeakMap<Glossary, Finder>()

/** Every use of a term, in the order of the text; of two that overlap, the longer counts. */
export function termsIn(text: string, glossary: Glossary): TermUse[] {
  const { pattern, termOf } = finderFor(glossary)
  // No terms would make a pattern that matches nothing at every place.
  if (termOf.size === 0) return []
  return [...text.matchAll(pattern)].map((match) => ({
    term: termOf.get(plain(match[0])) ?? '',
    words: match[0].replaceAll(/\s+/g, ' '),
    at: match.index,
    length: match[0].length,
  }))
}

function finderFor(glossary: Glossary): Finder {
  let finder = finders.get(glossary)
  if (!finder) {
    finder = makeFinder(glossary)
    finders.set(glossary, finder)
  }
  return finder
}

function makeFinder(glossary: Glossary): Finder {
  const termOf = new Map(
    Object.entries(glossary).flatMap(([id, { term, forms }]) =>
      [term, ...forms].map((form): [string, string] => [plain(form), id]),
    ),
  )
  const longestFirst = [...termOf.keys()].sort((a, b) => b.length - a.length)
  const alternatives = longestFirst.map((form) =>
    form.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(' ', '\\s+'),
  )
  return { pattern: new RegExp(`(?<![\\p{L}\\p{N}])(?:${alternatives.join('|')})(?![\\p{L}\\p{N}])`, 'giu'), termOf }
}

/** One spelling for comparing: small letters, single blanks, and one sign for micro (it comes as a Greek letter too). */
function plain(words: string): string {
  return words.toLowerCase().replaceAll(/\s+/g, ' ').replaceAll('\u03bc', '\u00b5')
}
