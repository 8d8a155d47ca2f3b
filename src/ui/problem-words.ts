/** What is wrong with something from outside, said in the page's language. */
import type { Problem, ProblemSaid } from '../press/problem.ts'
import { withParts } from '../press/problem.ts'
import { say } from './say.ts'

export function saySaid({ message, values }: ProblemSaid): string {
  return say(message, withParts(values, saySaid))
}

export function sayProblem({ said }: Problem): string {
  return saySaid(said)
}

/** The same with its place before it, as a piece of a list. */
export function problemLine(problem: Problem): string {
  return say('tools.problemAt', { path: problem.path || 'none', message: sayProblem(problem) })
}
