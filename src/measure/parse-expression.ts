import { create, parseDependencies } from 'mathjs/number'

/** Reads an expression into a tree and can do nothing else: none of the library's functions is loaded with it. */
export const parseExpression = create(parseDependencies).parse
