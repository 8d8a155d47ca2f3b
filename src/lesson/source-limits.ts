/**
 * What is too much to be parsed, told from the tokens alone. The parser calls itself for every level of nesting, and on
 * some thousand not only gives up but can take the whole page with it; and on a file of nothing but signs it takes seconds.
 */
import { Lexer } from 'yaml'
import type { ProblemSaid } from '../press/problem.ts'
import { said } from '../press/problem.ts'

/** Brackets open at once, or lists and fields begun on one line; a lesson has six. */
const deepest = 60
/** Blanks before a line; a lesson has some twenty. */
const widest = 240
/** Signs, words between them and blanks; the longest lesson of the course has 2,600. */
const mostTokens = 20_000

/** What the lexer puts before a text that stands without quotes. */
const textFollows = '\u001f'

/** What is wrong with the text as a whole; undefined where it may be parsed. */
export function beyondReading(text: string): ProblemSaid | undefined {
  let tokens = 0
  let brackets = 0
  let begun = 0
  let before = '\n'
  for (const token of new Lexer().lex(text)) {
    if (before === textFollows) {
      before = ''
      continue
    }
    if (token === '[' || token === '{') brackets++
    else if (token === ']' || token === '}') brackets = Math.max(0, brackets - 1)
    else if (token === '\n' || token === '\r\n') begun = 0
    else if (brackets === 0 && (token === '-' || token === '?' || token === ':')) begun++
    const isFarIn = before === '\n' && token.length > widest && token.trim() === ''
    if (brackets > deepest || begun > deepest || isFarIn) return said('checker.tooDeep')
    if (++tokens > mostTokens) return said('checker.tooManySigns', { most: mostTokens })
    before = token
  }
  return undefined
}
