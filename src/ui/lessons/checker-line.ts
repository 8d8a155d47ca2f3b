/** One line of the lesson checker: where, and what is wrong. */
import type { Problem } from '../../lesson/source.ts'
import { saySaid } from '../problem-words.ts'
import { say } from '../say.ts'

export function checkerLine({ line, col, said }: Problem): string {
  return `${say('lessons.problemAt', { line, col })} ${saySaid(said)}`
}
