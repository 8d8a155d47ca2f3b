/** The five parts of one nip, as shares of its time. */

/** Where each part begins; the last ends at 1. Chosen so that the opening, which decides, takes half of the time. */
const phases = [
  { name: 'arrival', from: 0 },
  { name: 'contact', from: 0.2 },
  { name: 'opening', from: 0.35 },
  { name: 'filaments', from: 0.55 },
  { name: 'leaving', from: 0.85 },
] as const

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
