/** What is wrong with something from outside, said in the page's language where it can be, else marked as English. */
import type { TemplateResult } from 'lit'
import { html } from 'lit'
import type { Problem } from '../press/problem.ts'
import { say } from './say.ts'

export function sayProblem({ message, said }: Problem): string {
  return said ? say(said.message, { ...said.values }) : message
}

/** The same with its place before it, as a piece of a list. */
export function problemLine(problem: Problem): TemplateResult {
  const text = say('tools.problemAt', { path: problem.path || 'none', message: sayProblem(problem) })
  return problem.said ? html`${text}` : html`<span lang="en">${text}</span>`
}
