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
  /** the part of its way at whose end the sheet stops; null where sheet follows sheet */
  stopsAfter: 'nip' | 'sheet' | null
}

export type PlaybackEvent =
  /** runs on and on; with `once` one sheet runs through all units, or goes on from where it was paused, and stops */
  | { kind: 'play'; once?: boolean }
  | { kind: 'pause' }
  | { kind: 'slow'; slow: boolean }
  /** time has passed, in seconds; a clock that was set back has passed none */
  | { kind: 'tick'; seconds: number }
  /** plays the next nip and stops; `atOnce` for those who want no motion */
  | { kind: 'step nip'; atOnce: boolean }
  /** moved by hand */
  | { kind: 'scrub'; phase: number }
  | { kind: 'look at unit'; unit: number }

/**
 * s that one nip takes to watch. Usual: chosen so that the line seems to run. Alone, as one nip is played: so that each of
 * its parts can be followed. Slow: five times the usual, so that a sentence of 16 words can be read beside it, at the 240
 * words a minute that adults read (Brysbaert 2019, Journal of Memory and Language 109).
 */
export const nipSeconds = { slow: 4, alone: 2.5, usual: 0.8 }

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
      return still(event.once ? onceThrough(playback) : { ...playback, playing: true, stopsAfter: null })
    case 'pause':
      return still({ ...playback, playing: false, stopsAfter: playback.stopsAfter === 'sheet' ? 'sheet' : null })
    case 'slow':
      return still({ ...playback, slow: event.slow })
    case 'scrub':
      return still({ ...playback, phase: clamp(event.phase), playing: false, stopsAfter: null })
    case 'look at unit':
      return still({
        ...playback,
        unit: Math.min(Math.max(0, event.unit), units - 1),
        stopsAfter: playback.playing ? playback.stopsAfter : null,
      })
    case 'step nip':
      return stepNip(playback, event.atOnce, units)
    case 'tick':
      return tick(playback, event.seconds, units)
  }
}

/** A sheet that was paused on its way goes on; any other begins at the first unit. */
function onceThrough(playback: Playback): Playback {
  const begun = playback.stopsAfter === 'sheet' ? {} : { unit: 0, phase: 0 }
  return { ...playback, ...begun, playing: true, stopsAfter: 'sheet' }
}

function stepNip(playback: Playback, atOnce: boolean, units: number): Played {
  const { playback: at, sheets } = playback.phase < 1 ? still(playback) : nextNip(playback, units)
  if (!atOnce) return { playback: { ...at, playing: true, stopsAfter: 'nip' }, sheets }
  return { playback: { ...at, phase: 1, playing: false, stopsAfter: null }, sheets }
}

function tick(playback: Playback, seconds: number, units: number): Played {
  if (!playback.playing) return still(playback)
  let { phase } = playback
  phase += Math.max(0, seconds || 0) / secondsOf(playback)
  if (phase < 1) return still({ ...playback, phase })
  const { unit, stopsAfter } = playback
  if (stopsAfter === 'nip' || (stopsAfter === 'sheet' && unit >= units - 1)) {
    return still({ ...playback, phase: 1, playing: false, stopsAfter: null })
  }
  // A page that slept through many nips goes on with the next one.
  const next = nextNip(playback, units)
  return { ...next, playback: { ...next.playback, phase: Math.min(phase - 1, 0.99) } }
}

function secondsOf({ slow, stopsAfter }: Playback): number {
  if (slow) return nipSeconds.slow
  return stopsAfter === 'nip' ? nipSeconds.alone : nipSeconds.usual
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
