/** The library that draws is run in parts, each in a turn of its own: all of it at once takes a slow machine long. */
import { nextTurn } from './next-turn.ts'

export async function runDrawingParts(): Promise<void> {
  await import('pixi.js/graphics')
  await nextTurn()
  await import('pixi.js/text')
  await nextTurn()
}
