/** The words of the glossary that somebody may mean by what was typed, whether or not it is a word of the trade. */
import type { GlossaryTerm } from '../../words/glossary-term.ts'

type Entry = [id: string, term: GlossaryTerm]

/** Those with it in their name or in an everyday word for them; where there are none, those whose explanation has it. */
export function findTerms(glossary: Readonly<Record<string, GlossaryTerm>>, typed: string): Entry[] {
  const wanted = plain(typed.trim())
  const having = (words: (term: GlossaryTerm) => readonly string[]) =>
    Object.entries(glossary).filter(([, term]) => words(term).some((text) => plain(text).includes(wanted)))
  const named = having(({ term, forms, also = [] }) => [term, ...forms, ...also])
  return named.length > 0 ? named : having(({ sentence, see }) => [sentence, see])
}

/** As it may be typed in haste: small letters, no accents. */
function plain(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase()
}
