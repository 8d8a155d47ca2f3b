/** The part of the address after the #: where the navigation points to, and where a set-up from a link arrives. */
import { learningOf } from '../session/learning.ts'
import { readLink } from '../session/link.ts'
import type { LinkSaid } from '../session/link-said.ts'
import type { Session } from '../session/session.ts'
import { showView } from '../session/snapshot.ts'
import type { ViewName, ViewState } from '../session/view-state.ts'
import { viewNames } from '../session/view-state.ts'
import { writeSetUp } from '../session/write-setup.ts'
import { browserStorage } from './browser-storage.ts'

/** The address of a view that leaves the set-up alone. */
export function addressOf(view: ViewName): string {
  return `#view=${view.replaceAll(' ', '+')}`
}

/** The address of a lesson, by the key under which it is kept; of the list of lessons, where the key is empty. */
export function addressOfLesson(key: string): string {
  return key === '' ? addressOf('lessons') : `${addressOf('lessons')}&lesson=${key.replaceAll(' ', '+')}`
}

/**
 * Says in the address which lesson is open (none where the key is empty), as a further place to go back to, or in place of
 * an address that was too general. What a link asks of the whole page stays in it; one that says it already is left alone.
 */
export function tellLesson(key: string, how: 'pushState' | 'replaceState'): void {
  const { hash } = location
  const view = readLink(hash)?.view
  if (view?.lesson === (key || undefined) && (view?.view === 'lessons' || key !== '')) return
  const kept = hash
    .slice(1)
    .split('&')
    .filter((pair) => /^(language|hide|only)=/.test(pair))
  history[how](null, '', [addressOfLesson(key), ...kept].join('&'))
}

export interface Followed {
  /** what was wrong with it */
  readonly problems: readonly LinkSaid[]
  /** whether it asks for a task, so that a view which is open has to open anew */
  readonly task: boolean
  /** settles when the units of measure it asks for are in use; rejects where their code does not arrive */
  readonly done: Promise<void>
}

const nothingAsked: Followed = { problems: [], task: false, done: Promise.resolve() }

/** Whether the address names at most a view or a task, so that what was on the bench before may stay there. */
export function leavesSetUp(hash: string): boolean {
  return readLink(hash)?.namesSetUp !== true
}

/**
 * Takes in an address that a person has gone to, by a link, Back or Forward: an empty one is the bench, and the lessons
 * without one of them are their list. A page that opens there goes by its draft instead.
 */
export function goToAddress(session: Session, hash: string): Followed {
  if (hash.length <= 1) session.lookWith({ view: 'bench', scene: null })
  const followed = followAddress(session, hash)
  const { view, lesson } = readLink(hash)?.view ?? {}
  if (view !== 'lessons' || lesson !== undefined) return followed
  learningOf(session, browserStorage).open = ''
  return { ...followed, task: true }
}

/** What the address asks to look at; nothing where it is empty or none of ours. */
export function viewAsked(hash: string): ViewState {
  const view = viewAlone(hash)
  if (view) return { view }
  const asked = readLink(hash)?.view
  return asked ? { ...asked, view: asked.scene === undefined ? viewNamedIn(asked) : 'lecture' } : {}
}

/** The one view that the address names and nothing else. */
function viewAlone(hash: string): ViewName | undefined {
  return viewNames.find((view) => addressOf(view) === hash)
}

/** A task is done in a view of its own, and a set-up looked at on the bench. */
function viewNamedIn({ view, lesson, drill }: ViewState): ViewName {
  return view ?? (lesson !== undefined ? 'lessons' : drill ? 'drills' : 'bench')
}

/** Takes in what the address asks for. */
export function followAddress(session: Session, hash: string): Followed {
  const alone = viewAlone(hash)
  if (alone) {
    session.lookWith({ view: alone, scene: null })
    return nothingAsked
  }
  const link = readLink(hash)
  if (!link) return nothingAsked
  const { view, problems } = link
  const { lesson, drill = null, hide = [] } = view
  if (view.scene !== undefined && !link.namesSetUp) {
    // A lecture brings its own set-ups; what is on the bench stays as it is.
    session.lookWith({ view: 'lecture', scene: view.scene })
    return { problems, task: false, done: Promise.resolve() }
  }
  if (link.namesSetUp) {
    session.giveBack()
    session.change({ kind: 'load', given: writeSetUp(link.setUp) })
  }
  if (lesson !== undefined) learningOf(session, browserStorage).open = lesson
  session.lookWith({ hide, drill, scene: null })
  const done = showView(session, { ...view, view: viewNamedIn(view) })
  return { problems, task: lesson !== undefined || drill !== null, done }
}
