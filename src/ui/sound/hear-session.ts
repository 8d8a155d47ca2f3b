/** Lets the nip of a session be heard: while it moves, when it is moved by hand, and when it is stepped through at once. */
import type { Session } from '../../session/session.ts'
import { knocksBetween, pitchOf, pullThatGave, toneAt } from './nip-sound.ts'
import type { Voice } from './voice.ts'

/** `voice` is made when something is first to be heard. Returns what ends it. */
export function hearSession(session: Session, makeVoice: () => Voice): () => void {
  let voice: Voice | undefined
  let before = session.playback
  let sounding = false

  const listen = () => {
    const now = session.playback
    const { setUp, results, patch } = session
    const was = before
    before = now
    const sameNip = was.unit === now.unit
    if (sameNip && was.phase === now.phase && was.playing === now.playing) return
    const account = results.accounts(patch)[Math.min(now.unit, setUp.inks.length - 1)]
    const tone = toneAt(account, now.phase)
    if (now.playing) hold(tone)
    else if (was.playing) hold(null)
    // Stepped through at once: the whole nip in one short tone, as it pulled at the last.
    else if (now.phase === 1 && (was.phase < 1 || !sameNip)) note(pitchOf(pullThatGave(account)))
    else if (tone !== null && sameNip && was.phase !== now.phase) note(tone)
    if (knocksBetween(account, sameNip ? was.phase : 0, now.phase)) (voice ??= makeVoice()).knock()
  }
  const hold = (pitch: number | null) => {
    if (pitch === null && !sounding) return
    sounding = pitch !== null
    ;(voice ??= makeVoice()).hold(pitch)
  }
  const note = (pitch: number) => {
    ;(voice ??= makeVoice()).note(pitch)
  }

  const ends = [session.subscribe(listen), session.subscribeToFrames(listen)]
  return () => {
    for (const end of ends) end()
    voice?.end()
  }
}
