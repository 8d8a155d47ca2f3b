/** The inks on the table beside the tackmeter: those loaded on the press, or an exercise's, whose tack is not told. */
import type { TackExercise } from '../../drill/tack-exercise.ts'
import { makeTackExercise } from '../../drill/tack-exercise.ts'
import type { TestInk } from '../../physics/tackmeter-run.ts'
import type { RigState } from '../../session/rig-desk.ts'
import type { Session } from '../../session/session.ts'
import { say } from '../say.ts'

export interface Sample {
  readonly name: string
  readonly ink: TestInk
  /** #rrggbb */
  readonly colour: string
}

/** An exercise's samples give nothing away by their colour. */
const sampleColour = '#77736b'

/** The exercise going on; null while the instrument is just tried. */
export function exerciseOf({ task, exercise }: RigState): TackExercise | null {
  return task === 'free' ? null : makeTackExercise(task, exercise)
}

export function samplesOf(session: Session, exercise: TackExercise | null): Sample[] {
  if (!exercise) {
    const { solids } = session.colours
    // The model's inks all dry alike.
    return session.setUp.inks.map(({ name, tack }, at) => ({ name, ink: { tack, volatility: 1 }, colour: solids[at] }))
  }
  return exercise.inks.map((ink, at) => ({
    name: say('rig.sample', { letter: String.fromCharCode(65 + at) }),
    ink,
    colour: sampleColour,
  }))
}
