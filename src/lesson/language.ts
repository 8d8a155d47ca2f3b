/** The glossary a lesson is held to: that of its language, and the terms it brings along. */
import * as v from 'valibot'
import { carried, given } from '../press/problem.ts'
import type { GlossaryTerm } from '../words/glossary-term.ts'
import { glossary as english } from '../words/en/glossary.ts'
import { glossary as spanish } from '../words/es/glossary.ts'
import { fields, id, listOf, text } from './field.ts'

export type Glossary = Readonly<Record<string, GlossaryTerm>>

const glossaries: Readonly<Record<string, Glossary>> = { en: english, es: spanish }
const none: Glossary = {}

const noLanguage = ({ input }: { input: unknown }) => carried('checker.language', { given: given(input) })

/** A language tag such as en, es or pt-BR. */
export const language = v.pipe(v.string(noLanguage), v.regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, noLanguage))

/** A term the program's own glossary does not have in this language. */
const ownTermSchema = fields('term', {
  id,
  term: text,
  forms: v.optional(listOf(text, 'forms', 0, 40), []),
  sentence: text,
})
export const ownTermsSchema = listOf(ownTermSchema, 'terms', 1, 200)
type OwnTerm = v.InferOutput<typeof ownTermSchema>

/** The program's own glossary in that language; an empty one where it has none. */
export function glossaryIn(tag: unknown): Glossary {
  const name = typeof tag === 'string' ? tag.split('-')[0] : ''
  return Object.hasOwn(glossaries, name) ? glossaries[name] : none
}

/** With the lesson's own terms, where it brings any; `terms` may be anything, and what is no term is left out. */
export function glossaryFor({ language: tag, glossary: terms }: { language: unknown; glossary?: unknown }): Glossary {
  const own = Array.isArray(terms) ? terms.flatMap(ownTerm) : []
  if (own.length === 0) return glossaryIn(tag)
  const added = own.map(({ id: name, term, forms, sentence }): [string, GlossaryTerm] => [
    name,
    { term, forms, sentence, see: '', related: [] },
  ])
  return { ...glossaryIn(tag), ...Object.fromEntries(added) }
}

function ownTerm(given: unknown): OwnTerm[] {
  const parsed = v.safeParse(ownTermSchema, given)
  return parsed.success ? [parsed.output] : []
}
