/**
 * Reads a YAML file of unknown origin: one plain document of the core schema and nothing clever. Anchors, aliases, tags
 * and merge keys are refused, so nothing can grow, and every value keeps its place for the messages.
 */
import type { Document, Node, Pair } from 'yaml'
import { isAlias, isCollection, isMap, isNode, isPair, isScalar, isSeq, LineCounter, parseDocument, visit } from 'yaml'
import { beyondReading } from './source-limits.ts'

/** Characters in the largest file read. */
export const largestFile = 256 * 1024

export interface Place {
  /** from 1 */
  line: number
  /** from 1 */
  col: number
}

/** One thing wrong with a file, where it stands, and what is allowed. */
export interface Problem extends Place {
  message: string
}

export type Path = readonly (string | number)[]

export interface Source {
  /** plain data; undefined where the file could not be read at all */
  value: unknown
  problems: Problem[]
  /** where the value at `path` stands, or the nearest that holds it; `offset` counts characters into a text */
  placeOf: (path: Path, offset?: number) => Place
  /** where the field's own name stands */
  placeOfKey: (path: Path) => Place
}

const top: Place = { line: 1, col: 1 }
/** Problems told of a file that is no sound YAML. */
const mostTold = 100
const forbiddenKeys = ['__proto__', 'constructor', 'prototype']

/** Reads `text`; never throws. */
export function readSource(text: string): Source {
  if (text.length > largestFile) {
    return unreadable(`is ${String(Math.ceil(text.length / 1024))} kB; allowed are files up to 256 kB`)
  }
  const tooMuch = beyondReading(text)
  if (tooMuch !== undefined) return unreadable(tooMuch)
  const lines = new LineCounter()
  const document = parseDocument(text, {
    version: '1.2',
    schema: 'core',
    lineCounter: lines,
    uniqueKeys: true,
    prettyErrors: false,
  })
  const at = (offset: number): Place => {
    const { line, col } = lines.linePos(offset)
    return line > 0 ? { line, col } : top
  }
  const found = [...document.errors, ...document.warnings].filter(({ code }) => code !== 'TAG_RESOLVE_FAILED')
  const problems = firstOf([
    ...found.map(({ pos, message }) => ({ ...at(pos[0]), message: yamlWords(message) })),
    ...refused(document, at),
  ])
  const places = placesIn(document, text, at)
  return { value: problems.length > 0 ? undefined : document.toJS({ maxAliasCount: 0 }), problems, ...places }
}

function unreadable(message: string): Source {
  return { value: undefined, problems: [{ ...top, message }], placeOf: () => top, placeOfKey: () => top }
}

/** Characters of the parser's words, which may quote a whole line, that are told. */
const longestWords = 160

/** The parser's own words. */
function yamlWords(message: string): string {
  const words = message.split('\n')[0].replace(/[.:]$/, '')
  if (words.startsWith('Map keys must be unique')) return 'this field is given twice; allowed is each field once'
  if (words.startsWith('Source contains multiple documents')) return 'a second document starts here; allowed is one'
  const short = words.length > longestWords ? `${words.slice(0, longestWords)}...` : words
  return `is not YAML as a lesson is written: ${short}`
}

/** As many as anybody reads. */
function firstOf(problems: readonly Problem[]): Problem[] {
  if (problems.length <= mostTold) return [...problems]
  const { line, col } = problems[mostTold]
  const more = problems.length - mostTold
  return [...problems.slice(0, mostTold), { line, col, message: `${more} more problems are not told` }]
}

/** What YAML can say and a lesson may not. */
function refused(document: Document.Parsed, at: (offset: number) => Place): Problem[] {
  const problems: Problem[] = []
  const say = (node: unknown, message: string) => {
    problems.push({ ...(isNode(node) && node.range ? at(node.range[0]) : top), message })
  }
  visit(document, {
    Alias: (_, node) => say(node, 'an alias (*) is not allowed; write the value out'),
    Node: (_, node) => {
      if (!isAlias(node) && node.anchor) say(node, 'an anchor (&) is not allowed; write the value out where it is used')
      if (node.tag) say(node, 'a tag (!) is not allowed; write the plain value')
      if (
        isScalar(node) &&
        typeof node.value === 'string' &&
        /[\u0000-\u0008\u000b\u000c\u000e-\u001f]/.test(node.value)
      ) {
        say(node, 'holds a control character; allowed is plain text')
      }
    },
    Pair: (_, { key }) => {
      if (!isScalar(key) || typeof key.value !== 'string') say(key, 'the name of a field is a plain word')
      else if (forbiddenKeys.includes(key.value)) say(key, `${key.value} is not allowed as the name of a field`)
    },
  })
  return problems
}

function placesIn(document: Document.Parsed, text: string, at: (offset: number) => Place) {
  const placeOf = (path: Path, offset?: number): Place => {
    const node = nearest(document.contents, path)
    if (!node?.range) return top
    if (offset !== undefined && isScalar(node)) return placeInText(node, text, offset, at)
    return at(node.range[0])
  }
  const placeOfKey = (path: Path): Place => {
    const holder = nearest(document.contents, path.slice(0, -1))
    const key = path.at(-1)
    const pair = isMap(holder) ? holder.items.find((item) => isPair(item) && keyOf(item) === key) : undefined
    return pair && isScalar(pair.key) && pair.key.range ? at(pair.key.range[0]) : placeOf(path)
  }
  return { placeOf, placeOfKey }
}

function keyOf(pair: Pair): unknown {
  return isScalar(pair.key) ? pair.key.value : undefined
}

/** The node at `path`, or the last on the way that exists. */
function nearest(contents: unknown, path: Path): Node | undefined {
  let node: unknown = contents
  for (const key of path) {
    const next = isCollection(node) ? (isSeq(node) || isMap(node)) && node.get(key, true) : undefined
    if (!isNode(next)) break
    node = next
  }
  return isNode(node) ? node : undefined
}

/** Where a character of a text stands; exact in | blocks and in texts of one line, else where the text begins. */
function placeInText(node: Node, text: string, offset: number, at: (offset: number) => Place): Place {
  const [start, end] = node.range ?? [0, 0]
  const scalar = node as { type?: string; value: string }
  const raw = text.slice(start, end)
  if (scalar.type === 'BLOCK_LITERAL') {
    const before = scalar.value.slice(0, offset).split('\n')
    const rows = raw.split('\n').slice(1)
    const indent = Math.min(
      ...rows.filter((row) => row.trim() !== '').map((row) => row.length - row.trimStart().length),
    )
    return { line: at(start).line + before.length, col: indent + before[before.length - 1].length + 1 }
  }
  if (raw.includes('\n')) return at(start)
  return at(start + offset + (scalar.type === 'PLAIN' ? 0 : 1))
}
