/** Writes a set-up as the plain JSON that check-setup.ts reads, leaving out what a reader would fill in anyway. */
import type { Paper, PaperName } from '../physics/paper.ts'
import { papers } from '../physics/paper.ts'
import type { Ink, Press, PressKind, Reading, SetUp } from '../press/setup.ts'

/** A set-up as written; what is left out stands at its default. */
export interface WrittenSetUp {
  inks: Ink[]
  paper: WrittenPaper
  press: WrittenPress
  reading: Reading
  seed: number
}

/** A paper by the supplied one it comes from, and what differs from that. */
type WrittenPaper = { base: PaperName } & Partial<Paper>

/** A press; its interval only where it is pinned. */
interface WrittenPress {
  kind: PressKind
  speed: number
  interval?: number
  temperature: number
  dampening: number
  waterless: boolean
}

/** Reading the result back gives the same set-up, field by field. */
export function writeSetUp({ inks, paper, press, reading, seed }: SetUp): WrittenSetUp {
  return { inks: inks.map((ink) => ({ ...ink })), paper: writePaper(paper), press: writePress(press), reading, seed }
}

function writePaper(paper: Paper): WrittenPaper {
  const supplied = papers[paper.base]
  const changed = Object.entries(paper).filter(([field, value]) => value !== supplied[field as keyof Paper])
  return { base: paper.base, ...Object.fromEntries(changed) }
}

function writePress({ intervalPinned, interval, ...rest }: Press): WrittenPress {
  return intervalPinned ? { ...rest, interval } : rest
}
