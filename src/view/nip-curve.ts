/**
 * How far the blanket stands off the sheet, place by place, as the sheet runs through. The blanket is round: seen from
 * the sheet, the line of contact enters at the right-hand, leading edge, spreads over the section and leaves the same
 * way, so the right-hand columns part first.
 *
 * Places are in widths of the section, 0 its left and 1 its right edge; gaps are shares of the widest gap shown.
 */

/** Chosen so that about half a section's width lies between closed and wide open. */
const steepness = 6

/** Where contact begins (columns left of it have not touched yet), by phase. */
const arrivalEdge = [
  [0, 1.8],
  [0.2, -0.02],
  [1, -0.02],
] as const

/** Where contact ends (columns right of it are being pulled apart), by phase. */
const openingEdge = [
  [0, 1.01],
  [0.5, 1.01],
  [0.85, -0.5],
  [1, -1.1],
] as const

export type Meeting = 'apart' | 'closed' | 'parting'

/** What the blanket does at `place`, and how wide the gap is (0 to 1). */
export function meetingAt(place: number, phase: number): { meeting: Meeting; gap: number } {
  const arrival = along(arrivalEdge, phase)
  if (place < arrival) return { meeting: 'apart', gap: gapAt(arrival - place) }
  const opening = openingAt(phase)
  if (place > opening) return { meeting: 'parting', gap: gapAt(place - opening) }
  return { meeting: 'closed', gap: 0 }
}

/** Where the stack is being pulled apart: what lies right of there is open. */
export function openingAt(phase: number): number {
  return along(openingEdge, phase)
}

/** A circle's gap grows with the square of the distance; the widest is kept in view, so it levels off. */
function gapAt(distance: number): number {
  return 1 - Math.exp(-steepness * distance * distance)
}

/** How far bare paper has drawn in, 0 to 1, what it holds at once: while it is in contact. */
export function soakedIn(place: number, phase: number): number {
  const touched = 0.02 + 0.18 * Math.max(0, 1 - place)
  return clamp((phase - touched) / 0.15)
}

/** How much of the time between two units has passed, 0 to 1: it ends where the films touch. */
export function timePassed(phase: number): number {
  return clamp(phase / 0.2)
}

/** How far the pull on the stack has grown, 0 to 1: it reaches the weakest plane as the nip begins to open. */
export function pullGrown(phase: number): number {
  return clamp((phase - 0.35) / 0.15)
}

/** Straight lines between the points of a table of (phase, value). */
function along(table: readonly (readonly [number, number])[], phase: number): number {
  const next = table.findIndex(([at]) => phase <= at)
  if (next <= 0) return table[next < 0 ? table.length - 1 : 0][1]
  const [from, start] = table[next - 1]
  const [to, end] = table[next]
  return start + ((end - start) * (phase - from)) / (to - from)
}

export function clamp(share: number): number {
  return Math.min(1, Math.max(0, share))
}
