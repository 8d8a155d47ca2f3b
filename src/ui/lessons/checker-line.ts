/** One line of the lesson checker: its place in the page's language, its words in English, which they still are. */
import { html } from 'lit'
import type { Problem } from '../../lesson/source.ts'
import { say } from '../say.ts'

export function checkerLine({ line, col, message }: Problem) {
  return html`${say('lessons.problemAt', { line, col })} <span lang="en">${message}</span>`
}
