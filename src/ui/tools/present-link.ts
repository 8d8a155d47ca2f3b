/** The link to what is on the bench and looked at now; from a lecture to the bench, as its scenes are too much for a link. */
import type { WrittenLink } from '../../session/link.ts'
import { writeLink } from '../../session/link.ts'
import { learningOf, ownIdIn } from '../../session/learning.ts'
import type { Session } from '../../session/session.ts'
import { viewOf } from '../../session/snapshot.ts'
import type { Hideable, ViewState } from '../../session/view-state.ts'
import { browserStorage } from '../browser-storage.ts'

export function presentLink(session: Session, hide: readonly Hideable[] = []): WrittenLink {
  const { view, ...rest } = viewOf(session)
  const opens = view === undefined || view === 'lecture' ? {} : { view }
  return writeLink(session.setUp, { ...rest, ...opens, ...task(session), ...(hide.length > 0 ? { hide } : {}) })
}

/** The set-up alone, for where every character counts. */
export function setUpLink({ setUp }: Session): WrittenLink {
  return writeLink(setUp)
}

/** The lesson or drill that is open. A lesson of one's own is no part of the course, so no link leads to it. */
function task(session: Session): ViewState {
  const { view, drill } = session.look
  if (view === 'drills' && drill) return { drill }
  if (view !== 'lessons') return {}
  const { open } = learningOf(session, browserStorage)
  return open === '' || ownIdIn(open) !== null ? {} : { lesson: open }
}
