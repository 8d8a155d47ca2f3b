/**
 * What comes into the page all at once, such as a view, is drawn in turns of the event loop: a part that finds its turn
 * full waits for the next. A quick machine needs one or two; a slow one answers in between.
 */
import { nextTurn } from '../view/next-turn.ts'

/** ms of a turn after which no further part is begun: chosen so that the largest of them still leaves the page quick. */
const enough = 16

/** ms since the page was opened; null where nothing has been drawn in this turn. What was before the first counts as full. */
let begun: number | null = 0
let isEnding = false
/** parts that wait, first come first served */
const waiting: (() => void)[] = []

/** Whether no further part should be drawn in this turn; something is drawn in it in any case. */
export function isTurnFull(): boolean {
  begun ??= performance.now()
  if (!isEnding) void endTurn()
  return waiting.length > 0 || performance.now() - begun > enough
}

/** Draws in the first turn that has room. */
export async function drawInLaterTurn(draw: () => void): Promise<void> {
  await new Promise<void>((admit) => waiting.push(admit))
  try {
    draw()
  } finally {
    if (begun !== null && performance.now() - begun <= enough) admitNext()
  }
}

/** Shows an element only once all parts that wait are drawn, so that nothing in it jumps; it can have the focus before. */
export async function showWhole({ style }: HTMLElement): Promise<void> {
  style.opacity = '0'
  do await nextTurn()
  while (waiting.length > 0)
  style.opacity = ''
}

async function endTurn(): Promise<void> {
  isEnding = true
  await nextTurn()
  isEnding = false
  begun = null
  if (waiting.length === 0) return
  isTurnFull()
  admitNext()
}

function admitNext(): void {
  waiting.shift()?.()
}
