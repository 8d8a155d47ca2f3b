/**
 * What the page shows at the very first: two inks, wet on wet, on a plain sheet. The tacks are chosen so far apart that
 * the computed result is plain in either order.
 */
import type { Scenario } from './scenarios.ts'
import { Session } from './session.ts'

const twoInks: Scenario = {
  inks: [
    { name: 'cyan', tack: 16 },
    { name: 'yellow', tack: 8 },
  ],
  paper: 'coated',
  press: { kind: 'sheet-fed' },
  reading: 'first',
}

/** A session of its own with the two inks, its sheet about to meet the second of them. */
export function twoInkSession(): Session {
  const session = new Session()
  const problems = session.change({ kind: 'load', given: twoInks })
  if (problems.length > 0) throw new Error(problems.map(({ message }) => message).join('; '))
  session.play({ kind: 'slow', slow: false })
  session.play({ kind: 'look at unit', unit: 1 })
  session.play({ kind: 'scrub', phase: 0 })
  return session
}
