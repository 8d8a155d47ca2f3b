/** One entry of the glossary, as every language writes it. */
export interface GlossaryTerm {
  /** as a headword: singular, lower case but for names */
  term: string
  /** inflections and synonyms by which a text may use it, without the headword itself */
  forms: readonly string[]
  /** everyday words that somebody looks for it by who does not know its name; any text may use them */
  also?: readonly string[]
  /** one plain sentence for a beginner; the terms it leans on never lean back on it */
  sentence: string
  /** what to look at on the bench */
  see: string
  /** ids of terms to read next */
  related: readonly string[]
  /** where the definition is published; absent for common practice */
  source?: string
}
