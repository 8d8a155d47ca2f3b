/** Why a name cannot be used on the shelf, in words, or null. The shelf's own check refuses the same. */
import { paperNames } from '../../physics/paper.ts'
import { longestName } from '../../press/ranges.ts'
import { say } from '../say.ts'

export function nameProblem(name: string): string | null {
  if (name === '' || name.length > longestName || name.includes(' on ')) {
    return say('strip.nameWrong', { most: longestName })
  }
  if (paperNames.some((own) => own === name.toLowerCase())) return say('strip.nameOfPaper', { name })
  return null
}
