/** Ticks the session while it plays, once a frame, with the time that has really passed. */
import type { Session } from '../session/session.ts'

/** s: a frame later than this was not late but asleep, and what it missed is not caught up on. */
const longestFrame = 0.25

/** Starts ticking whenever the session plays; returns what ends that. */
export function runClock(session: Session): () => void {
  let frame = 0
  let last = 0
  const tick = (now: number) => {
    session.play({ kind: 'tick', seconds: Math.min(longestFrame, (now - last) / 1000) })
    last = now
    frame = session.playback.playing ? requestAnimationFrame(tick) : 0
  }
  const start = () => {
    if (frame !== 0 || !session.playback.playing) return
    last = performance.now()
    frame = requestAnimationFrame(tick)
  }
  start()
  const unsubscribe = session.subscribe(start)
  return () => {
    unsubscribe()
    cancelAnimationFrame(frame)
  }
}
