/** The benches a scene is shown on: each a session of its own, so that nothing shown touches the bench of the page. */
import type { SetUp } from '../press/setup.ts'
import type { Look } from './look.ts'
import { openingPhase } from './playback.ts'
import type { Scene } from './scene.ts'
import { pressesOf, seenAfter } from './lecture-show.ts'
import { Session } from './session.ts'
import { viewOf } from './snapshot.ts'
import type { ViewState } from './view-state.ts'
import { writeSetUp } from './write-setup.ts'

/** One bench, or two for set-ups side by side. */
export function openScene({ setUp, view, beside }: Scene, look: Pick<Look, 'measures'>): Session[] {
  const { patch } = view
  // By their names, so that the same inks print in both.
  const leftOut = patch ? setUp.inks.filter((_, unit) => !patch.includes(unit)).map(({ name }) => name) : []
  return [setUp, ...(beside ? [beside.setUp] : [])].map((each) => openBench(each, view, { ...look, leftOut }))
}

function openBench(setUp: SetUp, { unit, face = 'ink' }: ViewState, look: Pick<Look, 'measures' | 'leftOut'>): Session {
  const session = new Session()
  const problem = session.change({ kind: 'load', given: writeSetUp(setUp) }).at(0)
  if (problem) throw new Error(`A scene cannot be shown: ${problem.message}`)
  const lookAt = () => session.play({ kind: 'look at unit', unit: unit ?? setUp.inks.length - 1 })
  session.play({ kind: 'slow', slow: false })
  session.lookWith({ face, leftOut: look.leftOut, measures: look.measures })
  lookAt()
  // A sheet far into a run is printed first, and until then the bench has the units of another set-up.
  const end = session.subscribe(() => {
    if (session.printing) return
    end()
    lookAt()
  })
  if (!session.printing) end()
  return session
}

/** Whether the inks stand in another order on the bench than the scene has them: one that was tried before the class. */
export function isTried({ setUp }: Session, scene: Scene): boolean {
  return setUp.inks.some(({ name }, unit) => name !== scene.setUp.inks.at(unit)?.name)
}

/**
 * How far the nip is through once so many presses have been made. Where no press plays it, films are seen best while they
 * part, and the sheet's face once the nip has passed.
 */
export function restingPhase(scene: Scene, press: number): number {
  if (pressesOf(scene).includes('nip')) return seenAfter(scene, press).nip ? 1 : 0
  return scene.picture === 'loupe' ? 1 : openingPhase
}

/** What the bench shows, for a scene: the set-up, the patch and the nip looked at. Which part of the page is open is not. */
export function benchForScene(session: Session): Pick<Scene, 'setUp' | 'view'> {
  const { patch, unit, face, measures } = viewOf(session)
  const view = Object.entries({ patch, unit, face, measures }).filter(([, value]) => value !== undefined)
  return { setUp: session.setUp, view: Object.fromEntries(view) }
}
