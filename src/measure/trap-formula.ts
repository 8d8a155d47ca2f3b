/** The trap equations as trees, for typesetting: with their symbols, and with the present values in their place. */
import type { FunctionNode, MathNode, SymbolNode } from 'mathjs'
import { parseExpression } from './parse-expression.ts'
import type { TrapDensities, TrapEquation } from './trap-equations.ts'

/** The equations once more, written to be read by people; tests hold them equal to the computed ones. */
const text: Readonly<Record<TrapEquation, string>> = {
  preucil: '100 * ((D3 - D1) / D2)',
  ritz: '100 * ((1 - 10^(-(D3 - D1))) / (1 - 10^(-D2)))',
  brunner: '100 * ((1 - 10^(-D3)) / (1 - 10^(-(D1 + D2))))',
}

/** The equation with its symbols D1, D2, D3. */
export function trapTree(equation: TrapEquation): MathNode {
  return parseExpression(text[equation])
}

/** Mass trap with its symbols, in percent: y_wet the film on wet ink, y_bare the film on bare paper. */
function massTrapTree(): MathNode {
  return parseExpression('100 * (y_wet / y_bare)')
}

/** TeX of a tree with its symbols, also of one that a person typed. */
export function texOf(tree: MathNode): string {
  return written(tree, (node) => (isSymbol(node) ? symbolTex(node) : undefined))
}

/** TeX of the tree with values in place of its symbols, to `decimals` places; the numbers of the equation itself stay as they are. */
function texWithValues(tree: MathNode, values: Readonly<Record<string, number>>, decimals = 2): string {
  return written(tree, (node) =>
    isSymbol(node) && Object.hasOwn(values, node.name) ? values[node.name].toFixed(decimals) : undefined,
  )
}

/** The library writes what a function is of twice and throws one away: with twenty nested that takes seconds. */
function written(tree: MathNode, symbol: (node: MathNode) => string | undefined): string {
  const handler = (node: MathNode, options: object): string | undefined => {
    if (!isCall(node) || node.args.length !== 1) return symbol(node)
    const inner = node.args[0].toTex(options)
    const { name } = node.fn
    if (name === 'sqrt') return `\\sqrt{${inner}}`
    return `${name === 'log10' ? '\\log_{10}' : `\\${name}`}\\left(${inner}\\right)`
  }
  return tree.toTex({ parenthesis: 'auto', handler })
}

/** What a page shows of one equation: in symbols, and with the values in it. */
export function trapTex(equation: TrapEquation, { D1, D2, D3 }: TrapDensities): { symbols: string; values: string } {
  const tree = trapTree(equation)
  return { symbols: texOf(tree), values: texWithValues(tree, { D1, D2, D3 }) }
}

/** The same for mass trap; films in um. */
export function massTrapTex(onWet: number, onBare: number): { symbols: string; values: string } {
  const tree = massTrapTree()
  return { symbols: texOf(tree), values: texWithValues(tree, { y_wet: onWet, y_bare: onBare }) }
}

/** D1 becomes D_1, y_wet becomes y with an upright "wet" below. */
function symbolTex({ name }: SymbolNode): string {
  const [letter, below] = name.includes('_') ? name.split('_') : [name[0], name.slice(1)]
  return below.length > 1 ? `${letter}_{\\mathrm{${below}}}` : `${letter}_{${below}}`
}

function isCall(node: MathNode): node is FunctionNode {
  return node.type === 'FunctionNode'
}

function isSymbol(node: MathNode): node is SymbolNode {
  return node.type === 'SymbolNode'
}
