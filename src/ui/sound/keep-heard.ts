/** Fetches the sound of the nip once a person has asked for it, and lets go of it when they no longer want it. */
import type { Session } from '../../session/session.ts'
import { comfort } from '../comfort.ts'
import { didNotArrive } from '../did-not-arrive.ts'

/** Returns what ends it. Where its code does not arrive the page stays silent, as it was. */
export function keepHeard(session: Session): () => void {
  let end: (() => void) | undefined
  let wanted = false
  let requests = 0
  const follow = async () => {
    const { sound = false } = comfort().settings
    if (sound === wanted) return
    wanted = sound
    const request = ++requests
    end?.()
    end = undefined
    if (!sound) return
    try {
      const [{ hearSession }, { loudspeaker }] = await Promise.all([import('./hear-session.ts'), import('./voice.ts')])
      // The person may have thought better of it in the meantime.
      if (request === requests) end = hearSession(session, loudspeaker)
    } catch (error) {
      if (!didNotArrive(error)) throw error
      wanted = false
    }
  }
  void follow()
  const unsubscribe = comfort().subscribe(() => void follow())
  return () => {
    unsubscribe()
    requests++
    end?.()
  }
}
