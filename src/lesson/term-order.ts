/**
 * No term before it is explained. A term counts as explained from the place where it stands in bold in the text of a
 * step that lists it under `explains`; its sentence from the glossary is shown beside that step, so the terms in that
 * sentence must be known by then as well. Title and objectives may name what the lesson is going to explain.
 */
import type { ProblemSaid } from '../press/problem.ts'
import { said } from '../press/problem.ts'
import type { Glossary } from './language.ts'
import type { LessonPassages, Passage, StepPassages } from './passages.ts'
import type { Path } from './source.ts'
import { termsIn } from './terms.ts'

/** A problem still to be given its line: at the value of `path`, `offset` characters into it, or at the field's name. */
export interface Located {
  path: Path
  offset?: number
  atKey?: true
  said: ProblemSaid
}

export interface TermDeclarations {
  everyday: readonly string[]
  assumes: readonly string[]
  introduces: readonly string[]
}

export function checkTermOrder(
  { opening, steps, closing }: LessonPassages,
  { everyday, assumes, introduces }: TermDeclarations,
  glossary: Glossary,
): Located[] {
  const known = new Set([...everyday, ...assumes])
  const used = new Set<string>()
  const problems = opening.flatMap((passage) => unknownIn(passage, new Set([...known, ...introduces]), used, glossary))
  for (const step of steps) {
    problems.push(...explain(step, known, used, glossary))
    problems.push(...step.others.flatMap((passage) => unknownIn(passage, known, used, glossary)))
  }
  problems.push(...closing.flatMap((passage) => unknownIn(passage, known, used, glossary)))
  return [...problems, ...unusedAssumptions(assumes, everyday, used, glossary)]
}

/** Reads the text of a step word by word; `known` grows with the terms it explains. */
function explain(step: StepPassages, known: Set<string>, used: Set<string>, glossary: Glossary): Located[] {
  const { text, explains, path } = step
  const uses = text ? termsIn(text.text, glossary) : []
  const bold = text ? boldRanges(text.text) : []
  const problems: Located[] = []
  const explained = new Set<string>()
  for (const { term, words, at, length } of uses) {
    used.add(term)
    if (known.has(term)) {
      if (explains.includes(term)) explained.add(term)
      continue
    }
    const isBold = bold.some(([from, to]) => at >= from && at + length <= to)
    if (isBold && explains.includes(term)) {
      problems.push(...unknownInSentence(term, known, used, [...path, 'explains', explains.indexOf(term)], glossary))
      known.add(term)
      explained.add(term)
    } else if (text) {
      problems.push({ path: text.path, offset: at, said: usedTooEarly(words, term) })
    }
  }
  const missing = explains.filter((term) => Object.hasOwn(glossary, term) && !explained.has(term))
  for (const term of missing) known.add(term)
  return [
    ...problems,
    ...missing.map((term) => ({
      path: [...path, 'explains', explains.indexOf(term)],
      said: said('checker.notBold', { id: term, word: glossary[term].term }),
    })),
  ]
}

function unknownInSentence(
  term: string,
  known: ReadonlySet<string>,
  used: Set<string>,
  path: Path,
  glossary: Glossary,
): Located[] {
  return termsIn(glossary[term].sentence, glossary).flatMap((use) => {
    used.add(use.term)
    if (known.has(use.term) || use.term === term) return []
    return { path, said: said('checker.explainedByUnknown', { otherId: term, word: use.words, id: use.term }) }
  })
}

function unknownIn(
  { path, text }: Passage,
  known: ReadonlySet<string>,
  used: Set<string>,
  glossary: Glossary,
): Located[] {
  return termsIn(text, glossary).flatMap(({ term, words, at }) => {
    used.add(term)
    return known.has(term) ? [] : { path, offset: at, said: usedTooEarly(words, term) }
  })
}

function usedTooEarly(words: string, term: string): ProblemSaid {
  return said('checker.usedTooEarly', { word: words, id: term })
}

function unusedAssumptions(
  assumes: readonly string[],
  everyday: readonly string[],
  used: ReadonlySet<string>,
  glossary: Glossary,
): Located[] {
  return assumes.flatMap((term, at) => {
    const path = ['assumes', at]
    if (!Object.hasOwn(glossary, term)) return []
    if (everyday.includes(term)) return { path, said: said('checker.assumedEveryday', { id: term }) }
    return used.has(term) ? [] : { path, said: said('checker.assumedUnused', { id: term }) }
  })
}

function boldRanges(text: string): [number, number][] {
  return [...text.matchAll(/\*\*[^*]+\*\*/g)].map((match) => [match.index, match.index + match[0].length])
}
