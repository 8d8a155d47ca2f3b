/**
 * Reads a YAML file of unknown origin: one plain document of the core schema and nothing clever. Anchors, aliases, tags
 * and merge keys are refused, so nothing can grow, and every value keeps its place for the messages.
 */
import type { Document, Node, Pair } from 'yaml'
import { isAlias, isCollection, isMap, isNode, isPair, isScalar, isSeq, LineCounter, parseDocument, visit } from 'yaml'
import type { ProblemSaid } from '../press/problem.ts'
import { inEnglish, said } from '../press/problem.ts'
import { beyondReading } from './source-limits.ts'
import { yamlProblem } from './yaml-problem.ts'

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
  /** in English */
  message: string
  /** the same to be said in any language */
  said: ProblemSaid
}

export function toldAt(place: Place, said: ProblemSaid): Problem {
  return { ...place, message: inEnglish(said), said }
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

export const top: Place = { line: 1, col: 1 }
/** Problems told of a file that is no sound YAML. */
const mostTold = 100
const forbiddenKeys = ['__proto__', 'constructor', 'prototype']

/** Reads `text`; never throws. */
export function readSource(text: string): Source {
  if (text.length > largestFile) {
    return unreadable(tooLarge(text.length))
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
    ...found.map((error) => toldAt(at(error.pos[0]), yamlProblem(error))),
    ...refused(document, at),
  ])
  const places = placesIn(document, text, at)
  return { value: problems.length > 0 ? undefined : document.toJS({ maxAliasCount: 0 }), problems, ...places }
}

/** `size` in characters or bytes */
export function tooLarge(size: number): ProblemSaid {
  return said('checker.tooLarge', { size: Math.ceil(size / 1024), most: largestFile / 1024 })
}

function unreadable(problem: ProblemSaid): Source {
  return { value: undefined, problems: [toldAt(top, problem)], placeOf: () => top, placeOfKey: () => top }
}

/** As many as anybody reads. */
function firstOf(problems: readonly Problem[]): Problem[] {
  if (problems.length <= mostTold) return [...problems]
  const { line, col } = problems[mostTold]
  const more = said('checker.more', { count: problems.length - mostTold })
  return [...problems.slice(0, mostTold), toldAt({ line, col }, more)]
}

/** What YAML can say and a lesson may not. */
function refused(document: Document.Parsed, at: (offset: number) => Place): Problem[] {
  const problems: Problem[] = []
  const tell = (node: unknown, problem: ProblemSaid) => {
    problems.push(toldAt(isNode(node) && node.range ? at(node.range[0]) : top, problem))
  }
  visit(document, {
    Alias: (_, node) => tell(node, said('checker.alias')),
    Node: (_, node) => {
      if (!isAlias(node) && node.anchor) tell(node, said('checker.anchor'))
      if (node.tag) tell(node, said('checker.tag'))
      if (
        isScalar(node) &&
        typeof node.value === 'string' &&
        /[\u0000-\u0008\u000b\u000c\u000e-\u001f]/.test(node.value)
      ) {
        tell(node, said('checker.controlCharacter'))
      }
    },
    Pair: (_, { key }) => {
      if (!isScalar(key) || typeof key.value !== 'string') tell(key, said('checker.fieldName'))
      else if (forbiddenKeys.includes(key.value)) tell(key, said('checker.forbiddenName', { word: key.value }))
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
