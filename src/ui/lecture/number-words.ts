/** The one number of a scene as figure, unit and words. */
import type { NumberRead } from '../../session/scene-number.ts'
import { readSceneNumber } from '../../session/scene-number.ts'
import type { SceneNumber } from '../../session/scene.ts'
import type { Session } from '../../session/session.ts'
import { toShown } from '../../session/measures.ts'
import { say, sayNumber, sayPercent } from '../say.ts'

export interface NumberWords {
  /** with its unit */
  readonly figure: string
  readonly words: string
}

/** Null where the set-up has no such number. */
export function numberWords(session: Session, number: SceneNumber): NumberWords | null {
  const read = readSceneNumber(session, number)
  if (!read) return null
  const { of, ink, below } = read
  return { figure: figureOf(read, session), words: say(`lecture.said.${of}`, { ink, below }) }
}

function figureOf({ of, value }: NumberRead, { look }: Session): string {
  if (of === 'contamination') return sayNumber(100 * value, 1)
  if (of !== 'film') return sayPercent(value)
  const { film } = look.measures
  return `${sayNumber(toShown(value, film), 2)}\u00a0${say(`bench.unit.${film.unit}`)}`
}

/** How a number is offered for choice. */
export function numberName({ of, ink = '', below = '' }: SceneNumber): string {
  return say(`lecture.number.${of}`, { ink, below })
}
