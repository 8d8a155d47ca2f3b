/** Languages a lesson may be written in: those with a glossary, as terms are checked against it. */
import type { GlossaryTerm } from '../words/glossary-term.ts'
import { glossary } from '../words/en/glossary.ts'

export type Glossary = Readonly<Record<string, GlossaryTerm>>

const glossaries: Readonly<Record<string, Glossary>> = { en: glossary }

export const languages = Object.keys(glossaries)

/** The glossary of a language, the English one where there is none. */
export function glossaryOf(language: unknown): Glossary {
  return typeof language === 'string' && Object.hasOwn(glossaries, language) ? glossaries[language] : glossary
}
