/** The part of the address after the #: where the navigation points to, and where a set-up from a link arrives. */
import { readLink } from '../session/link.ts'
import type { LinkSaid } from '../session/link-said.ts'
import type { Session } from '../session/session.ts'
import type { ViewName } from '../session/view-state.ts'
import { viewNames } from '../session/view-state.ts'
import { writeSetUp } from '../session/write-setup.ts'

/** The address of a view that leaves the set-up alone. */
export function addressOf(view: ViewName): string {
  return `#view=${view.replaceAll(' ', '+')}`
}

/** Takes in what the address asks for; returns what was wrong with it. */
export function followAddress(session: Session, hash: string): readonly LinkSaid[] {
  const alone = viewNames.find((view) => addressOf(view) === hash)
  if (alone) {
    session.lookWith({ view: alone })
    return []
  }
  const link = readLink(hash)
  if (!link) return []
  session.change({ kind: 'load', given: writeSetUp(link.setUp) })
  const { view = 'bench', face = 'ink', patch, unit } = link.view
  const leftOut = patch ? link.setUp.inks.filter((_, index) => !patch.includes(index)).map(({ name }) => name) : []
  session.lookWith({ view, face, leftOut })
  if (unit !== undefined) session.play({ kind: 'look at unit', unit })
  return link.problems
}
