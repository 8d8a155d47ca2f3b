/**
 * The language of the page: its words, the way it writes, and who is to be told when it changes. English is there from
 * the start; any other comes when it is first chosen.
 */
import type { en as english } from '../words/en.ts'
import { en } from '../words/en.ts'
import { glossary } from '../words/en/glossary.ts'
import type { GlossaryTerm } from '../words/glossary-term.ts'
import type { Translated } from '../words/translated.ts'

export type MessageKey = keyof typeof english
type Words = Translated<typeof english>

export interface Language {
  /** as in <html lang>, which formats numbers too */
  readonly tag: string
  readonly direction: 'ltr' | 'rtl'
  readonly words: Words
  readonly glossary: Readonly<Record<string, GlossaryTerm>>
}

const loaders: Readonly<Record<string, () => Promise<Language>>> = {
  en: () => Promise.resolve(atFirst),
  'en-x-long': () => pseudo('en-x-long', 'ltr'),
  'en-x-mirror': () => pseudo('en-x-mirror', 'rtl'),
  es: async () => {
    const [{ es }, { glossary: terms }] = await Promise.all([
      import('../words/es.ts'),
      import('../words/es/glossary.ts'),
    ])
    return { tag: 'es', direction: 'ltr', words: es, glossary: terms }
  },
}

/** For tests alone: see pseudo-language.ts. */
async function pseudo(tag: string, direction: Language['direction']): Promise<Language> {
  const { pseudoWords } = await import('./pseudo-language.ts')
  return { tag, direction, words: pseudoWords(), glossary }
}

const atFirst: Language = { tag: 'en', direction: 'ltr', words: en, glossary }
const listeners = new Set<() => void>()
let now = atFirst
let chosen = atFirst.tag

/** The language in force. */
export function language(): Language {
  return now
}

export function isOffered(tag: string): boolean {
  return Object.hasOwn(loaders, tag)
}

/** Puts the page into another language. Rejects with a TypeError where it does not arrive; the page stays as it is. */
export async function chooseLanguage(tag: string): Promise<void> {
  chosen = tag
  const loaded = await loaders[tag]()
  // Whoever has chosen again in the meantime gets that.
  if (chosen !== tag || loaded === now) return
  now = loaded
  for (const listener of listeners) listener()
}

/** Tells of every change from now on, until the function it returns is called. */
export function onLanguage(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}
