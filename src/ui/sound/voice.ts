/** The loudspeaker, as the nip needs it. Made when it is first to sound, since browsers keep a page silent until somebody has pressed something. */

/** What can be heard. */
export interface Voice {
  /** a tone that holds until another or null is asked for; Hz */
  readonly hold: (pitch: number | null) => void
  /** a short tone; Hz */
  readonly note: (pitch: number) => void
  readonly knock: () => void
  readonly end: () => void
}

/** Shares of full loudness, the tone's at `evenPitch`: chosen low, to lie under a voice that explains. */
const toneLevel = 0.06
const knockLevel = 0.25
/**
 * Ears hear low tones less. A tone is as much stronger below `evenPitch` (Hz), and weaker above, as the curve A of
 * IEC 61672 weighs a triangle wave by this power of its pitch, to 3 dB from 165 to 1320 Hz: so that only the pitch rises.
 */
const evenPitch = 440
const evenPower = 0.72
/** s: how fast a tone comes and goes, so that nothing clicks, and how long a short one and a knock last. */
const easing = 0.02
const noteLength = 0.35
const knockLength = 0.09
/** Hz: as low as small loudspeakers still give it. */
const knockPitch = 165

export function loudspeaker(): Voice {
  const context = new AudioContext()
  const tone = source(context, 'triangle', 220)
  return {
    hold: (pitch) => {
      void context.resume()
      const { currentTime } = context
      // Or the end of a short tone before it would cut it off.
      tone.level.cancelScheduledValues(currentTime)
      if (pitch !== null) tone.pitch.setTargetAtTime(pitch, currentTime, easing)
      tone.level.setTargetAtTime(pitch === null ? 0 : levelOf(pitch), currentTime, easing)
    },
    note: (pitch) => {
      void context.resume()
      const { currentTime } = context
      tone.level.cancelScheduledValues(currentTime)
      tone.pitch.setTargetAtTime(pitch, currentTime, easing / 4)
      tone.level.setTargetAtTime(levelOf(pitch), currentTime, easing)
      tone.level.setTargetAtTime(0, currentTime + noteLength, easing)
    },
    knock: () => {
      const { currentTime } = context
      const thud = source(context, 'sine', knockPitch)
      thud.level.setValueAtTime(knockLevel, currentTime)
      thud.level.exponentialRampToValueAtTime(0.001, currentTime + knockLength)
      thud.stop(currentTime + knockLength)
    },
    end: () => void context.close(),
  }
}

function levelOf(pitch: number): number {
  return toneLevel * (evenPitch / pitch) ** evenPower
}

/** Something that sounds on and on, silent at first. */
function source(context: AudioContext, type: OscillatorType, frequency: number) {
  const oscillator = new OscillatorNode(context, { type, frequency })
  const gain = new GainNode(context, { gain: 0 })
  oscillator.connect(gain).connect(context.destination)
  oscillator.start()
  return { pitch: oscillator.frequency, level: gain.gain, stop: (at: number) => oscillator.stop(at) }
}
