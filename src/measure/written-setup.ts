/** Papers, presses and inks as a set-up file writes them: what src/press/check-setup.ts reads back to the same. */
import type { Paper } from '../physics/paper.ts'
import type { Ink, Press } from '../press/setup.ts'

export type WrittenPaper = Partial<Paper> & { readonly name: string }
export type WrittenPress = Partial<Omit<Press, 'intervalPinned'>>
export type WrittenInk = Ink

/** A paper under a name of its own. */
export function writtenPaper(paper: Paper, name: string): WrittenPaper {
  return { ...paper, name }
}

/** A press; an interval that follows from speed and spacing is left to follow. */
export function writtenPress({ intervalPinned, interval, ...press }: Press): WrittenPress {
  return intervalPinned ? { ...press, interval } : press
}
