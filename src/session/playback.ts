/**
 * The clock of the bench, as a pure reducer: which nip is looked at, how far it has opened, and whether it moves by
 * itself. It never touches the result; it only says which part of it is shown.
 */

export interface Playback {
  /** unit (from 0) whose nip is looked at */
  unit: number
  /** how far the sheet is through that nip, 0 arriving to 1 gone */
  phase: number
  playing: boolean
  slow: boolean
  /** stops at the end of this nip */
  oneNip: boolean
}

export type PlaybackEvent =
  | { kind: 'play' }
  | { kind: 'pause' }
  | { kind: 'slow'; slow: boolean }
  /** time has passed, in seconds; a clock that was set back has passed none */
  | { kind: 'tick'; seconds: number }
  /** plays the next nip and stops; `atOnce` for those who want no motion */
  | { kind: 'step nip'; atOnce: boolean }
  /** moved by hand */
  | { kind: 'scrub'; phase: number }
  | { kind: 'look at unit'; unit: number }

/** s that one nip takes to watch: in slow motion so that each stage can be followed, else so that the line seems to run. */
export const nipSeconds = { slow: 2.5, usual: 0.8 }

/** Where the page opens: the filaments are stretched but not all have broken. */
export const openingPhase = 0.55

export interface Played {
  playback: Playback
  /** sheets that ran out of the last unit meanwhile */
  sheets: number
}

/** Takes one event; `units` is how many there are. */
export function play(playback: Playback, event: PlaybackEvent, units: number): Played {
  switch (event.kind) {
    case 'play':
      return still({ ...playback, playing: true, oneNip: false, slow: playback.slow })
    case 'pause':
      return still({ ...playback, playing: false, oneNip: false })
    case 'slow':
      return still({ ...playback, slow: event.slow })
    case 'scrub':
      return still({ ...playback, phase: clamp(event.phase), playing: false, oneNip: false })
    case 'look at unit':
      return still({ ...playback, unit: Math.min(Math.max(0, event.unit), units - 1) })
    case 'step nip':
      return stepNip(playback, event.atOnce, units)
    case 'tick':
      return tick(playback, event.seconds, units)
  }
}

function stepNip(playback: Playback, atOnce: boolean, units: number): Played {
  const { playback: at, sheets } = playback.phase < 1 ? still(playback) : nextNip(playback, units)
  if (!atOnce) return { playback: { ...at, playing: true, oneNip: true }, sheets }
  return { playback: { ...at, phase: 1, playing: false, oneNip: false }, sheets }
}

function tick(playback: Playback, seconds: number, units: number): Played {
  if (!playback.playing) return still(playback)
  let { phase } = playback
  phase += Math.max(0, seconds || 0) / (playback.slow || playback.oneNip ? nipSeconds.slow : nipSeconds.usual)
  if (phase < 1) return still({ ...playback, phase })
  if (playback.oneNip) return still({ ...playback, phase: 1, playing: false, oneNip: false })
  // A page that slept through many nips goes on with the next one.
  const next = nextNip(playback, units)
  return { ...next, playback: { ...next.playback, phase: Math.min(phase - 1, 0.99) } }
}

function nextNip(playback: Playback, units: number): Played {
  const last = playback.unit >= units - 1
  return { playback: { ...playback, unit: last ? 0 : playback.unit + 1, phase: 0 }, sheets: last ? 1 : 0 }
}

function still(playback: Playback): Played {
  return { playback, sheets: 0 }
}

function clamp(phase: number): number {
  return Number.isFinite(phase) ? Math.min(1, Math.max(0, phase)) : 0
}
