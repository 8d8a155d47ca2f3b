/**
 * What is wrong with a text that is no YAML: the parser's codes, and where one code stands for many things the beginning
 * of its words, as sentences for somebody who has never heard of YAML.
 */
import type { YAMLError } from 'yaml'
import type { ProblemKey, ProblemSaid } from '../press/problem.ts'
import { said } from '../press/problem.ts'

type Code = YAMLError['code']

/** The first that fits counts. */
const reasons: readonly [codes: readonly Code[], words: RegExp, why: ProblemKey][] = [
  [['TAB_AS_INDENT'], /^/, 'checker.yaml.tab'],
  [['MISSING_CHAR', 'BAD_INDENT'], /^Flow | must end with /, 'checker.yaml.bracket'],
  [['BAD_INDENT'], /^/, 'checker.yaml.indent'],
  [['MISSING_CHAR'], /^Missing closing/, 'checker.yaml.quote'],
  [['MISSING_CHAR'], /^Missing , /, 'checker.yaml.comma'],
  [['UNEXPECTED_TOKEN'], /^Unexpected (,|empty item)/, 'checker.yaml.comma'],
  [['MISSING_CHAR'], /^Comments/, 'checker.yaml.hash'],
  [['MISSING_CHAR'], /^(Implicit map keys|Sequence item)/, 'checker.yaml.colon'],
  [['MULTILINE_IMPLICIT_KEY'], /^/, 'checker.yaml.colon'],
  [['BLOCK_AS_IMPLICIT_KEY', 'KEY_OVER_1024_CHARS'], /^/, 'checker.yaml.colonInText'],
  [['BLOCK_IN_FLOW'], /^/, 'checker.yaml.inBrackets'],
  [['MISSING_CHAR'], /directives-end/, 'checker.yaml.start'],
  [['BAD_SCALAR_START', 'BAD_DIRECTIVE', 'BAD_ALIAS'], /^/, 'checker.yaml.start'],
  [['ALIAS_PROPS', 'MULTIPLE_ANCHORS', 'MULTIPLE_TAGS', 'BAD_PROP_ORDER'], /^/, 'checker.yaml.start'],
  [['BAD_DQ_ESCAPE'], /^/, 'checker.yaml.escape'],
  [['MISSING_CHAR', 'UNEXPECTED_TOKEN'], /^(Block scalar|Not a YAML token)/, 'checker.yaml.block'],
  [['UNEXPECTED_TOKEN'], /^/, 'checker.yaml.unexpected'],
]

/** Characters of the parser's words, which may quote a whole line, that are told. */
const longestWords = 160

export function yamlProblem({ code, message }: YAMLError): ProblemSaid {
  if (code === 'DUPLICATE_KEY') return said('checker.fieldTwice')
  if (code === 'MULTIPLE_DOCS') return said('checker.secondDocument')
  const known = reasons.find(([codes, words]) => codes.includes(code) && words.test(message))
  return said('checker.yaml', { why: known ? said(known[2]) : parserWords(message) })
}

/** In the parser's own words, where there are no better ones. */
function parserWords(message: string): string {
  const words = message.split('\n')[0].replace(/[.:]$/, '')
  return words.length > longestWords ? `${words.slice(0, longestWords)}...` : words
}
