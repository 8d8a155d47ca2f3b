/**
 * Drawing of all pictures, at the next frame. What a slow machine cannot draw in good time waits for the frame after, so
 * that the page answers in between; a quick one draws all at once.
 */

/** ms of a frame after which no further picture is begun: chosen so that one more still leaves the page quick. */
export const enough = 12

const waiting = new Set<() => void>()
let frame = 0

/** However often it is asked for before its turn, it is drawn once. */
export function drawSoon(draw: () => void): void {
  waiting.add(draw)
  if (frame === 0) frame = requestAnimationFrame(drawWaiting)
}

/** It no longer wants to be drawn. */
export function drawNoMore(draw: () => void): void {
  waiting.delete(draw)
}

function drawWaiting(): void {
  frame = 0
  const until = performance.now() + enough
  // What asks again while it is drawn comes last.
  for (const draw of [...waiting]) {
    waiting.delete(draw)
    draw()
    if (performance.now() > until) break
  }
  if (waiting.size > 0 && frame === 0) frame = requestAnimationFrame(drawWaiting)
}
