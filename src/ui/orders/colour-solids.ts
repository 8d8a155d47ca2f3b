/** The colours of the loaded inks' solids by name. */
import type { Session } from '../../session/session.ts'

export function colourSolids({ setUp, colours }: Pick<Session, 'setUp' | 'colours'>): Map<string, string> {
  const { solids } = colours
  return new Map(setUp.inks.map(({ name }, unit) => [name, solids[unit]]))
}
