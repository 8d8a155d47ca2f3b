/** The five parts of one nip, as shares of its time, and how far nip and sheet have moved by then. */

/** Where each part begins; the last ends at 1. Chosen so that the opening, which decides, takes half of the time. */
export const phases = [
  { name: 'arrival', from: 0 },
  { name: 'contact', from: 0.2 },
  { name: 'opening', from: 0.35 },
  { name: 'filaments', from: 0.55 },
  { name: 'leaving', from: 0.85 },
] as const

export type PhaseName = (typeof phases)[number]['name']

/** s: one nip in slow motion. */
export const slowNip = 2.5

/** Which part of the nip `phase` (0 to 1) lies in, from 0. */
export function phaseIndex(phase: number): number {
  return phases.findLastIndex(({ from }) => phase >= from || from === 0)
}

/** The five still pictures shown instead of motion: one typical moment of each part. */
const stills = [0.08, 0.34, 0.5, 0.68, 1]

/** The phase to draw. */
export function shownPhase({ phase, motion }: { phase: number; motion: boolean }): number {
  const within = Math.min(1, Math.max(0, phase))
  return motion ? within : stills[phaseIndex(within)]
}
