/**
 * Reads arithmetic that a person typed, with the symbols D1, D2, D3. The text becomes a tree, the tree is walked, and
 * only numbers, these symbols, + - * / ^ and a few functions pass; everything else the parser knows (assignment, units,
 * lists, texts, indexing, other functions) is refused by not being listed. What passes is computed here, so nothing
 * typed ever reaches a function of the library or of the page.
 */
import type { ConstantNode, FunctionNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs'
import { parseExpression } from './parse-expression.ts'
import type { Refused } from './said.ts'
import { isRefused, refuse } from './said.ts'
import type { TrapDensities } from './trap-equations.ts'

/** A formula ready to be computed; the result is not finite where it divides by 0 or leaves the numbers. */
export interface Formula {
  /** the tree as it was understood, for typesetting */
  readonly tree: MathNode
  readonly compute: Compute
}

type Compute = (densities: TrapDensities) => number

/** Characters; the longest of the equations takes some 50. */
export const longestFormula = 200
/** Levels of nesting. */
const deepest = 20

const symbols = ['D1', 'D2', 'D3'] as const

/** By the parser's own names; a minus before a number is there the function unaryMinus. */
const operators = new Map<string, (a: number, b: number) => number>([
  ['add', (a, b) => a + b],
  ['subtract', (a, b) => a - b],
  ['multiply', (a, b) => a * b],
  ['divide', (a, b) => a / b],
  ['pow', (a, b) => a ** b],
  ['unaryMinus', (a) => -a],
  ['unaryPlus', (a) => a],
])

const functions = new Map<string, (a: number) => number>([
  ['log10', Math.log10],
  ['ln', Math.log],
  ['exp', Math.exp],
  ['sqrt', Math.sqrt],
])

/** Reads a formula; never throws, and answers in words what it cannot read. */
export function readFormula(text: string): Formula | Refused {
  if (text.length > longestFormula) return refuse('formula.tooLong', { most: longestFormula })
  const plain = plainSigns(text)
  if (plain.trim() === '') return refuse('formula.empty')
  const tree = parsed(plain)
  if (isRefused(tree)) return tree
  const compute = computeOf(tree, 0)
  return isRefused(compute) ? compute : { tree, compute }
}

/** Signs that people type or paste: subscripts, a true minus, times and divided by. */
function plainSigns(text: string): string {
  return text
    .normalize('NFKC')
    .replaceAll(/[\u2212\u2013]/g, '-')
    .replaceAll(/[\u00d7\u00b7\u22c5]/g, '*')
    .replaceAll(/[\u00f7\u2215\u2044]/g, '/')
    .replaceAll(/\bd(?=[123]\b)/g, 'D')
}

function parsed(text: string): MathNode | Refused {
  try {
    return parseExpression(text)
  } catch (error) {
    // The parser counts from 1 and says where it gave up; its wording is not for learners.
    const place = error instanceof SyntaxError ? /\(char (\d+)\)/.exec(error.message)?.[1] : undefined
    return place === undefined ? refuse('formula.unreadable') : refuse('formula.unreadableAt', { place: Number(place) })
  }
}

/** The computation of a tree, or the first thing in it that is not allowed. */
function computeOf(node: MathNode, depth: number): Compute | Refused {
  if (depth > deepest) return refuse('formula.tooDeep')
  switch (node.type) {
    case 'ConstantNode':
      return constant(node as ConstantNode)
    case 'SymbolNode':
      return symbol((node as SymbolNode).name)
    case 'ParenthesisNode':
      return computeOf((node as ParenthesisNode).content, depth + 1)
    case 'OperatorNode':
      return operation(node as OperatorNode, depth)
    case 'FunctionNode':
      return call(node as FunctionNode, depth)
    default:
      return refuse('formula.onlyArithmetic')
  }
}

function constant({ value }: { value: unknown }): Compute | Refused {
  return typeof value === 'number' && Number.isFinite(value) ? () => value : refuse('formula.onlyArithmetic')
}

function symbol(name: string): Compute | Refused {
  const known = symbols.find((each) => each === name)
  return known ? (densities) => densities[known] : refuse('formula.unknownSymbol', { name: short(name) })
}

function operation(node: OperatorNode, depth: number): Compute | Refused {
  const operator = operators.get(node.fn)
  if (!operator) return refuse('formula.unknownOperator', { name: short(node.op) })
  const [first, second = first] = node.args.map((part) => computeOf(part, depth + 1))
  if (isRefused(first)) return first
  if (isRefused(second)) return second
  return (densities) => operator(first(densities), second(densities))
}

function call(node: FunctionNode, depth: number): Compute | Refused {
  // A function may be called by a longer expression than a name; that has no name here and is refused like one not listed.
  const callee = node.fn as unknown as MathNode
  const name = callee.type === 'SymbolNode' ? (callee as SymbolNode).name : ''
  if (symbols.some((each) => each === name)) return refuse('formula.missingTimes', { name })
  if (name === 'log') return refuse('formula.whichLog')
  const work = functions.get(name)
  if (!work) return refuse('formula.unknownFunction', { name: short(name) })
  if (node.args.length !== 1) return refuse('formula.oneValue', { name })
  const inner = computeOf(node.args[0], depth + 1)
  return isRefused(inner) ? inner : (densities) => work(inner(densities))
}

/** A name as typed, shortened for a message. */
function short(name: string): string {
  return name.length > 20 ? `${name.slice(0, 20)}...` : name
}
