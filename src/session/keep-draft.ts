/** Ties a draft to a session: takes up what was kept, and from then on keeps whatever changes. */
import { deskOf } from './desk.ts'
import type { Draft, OpenedDraft } from './draft.ts'
import { writeFile } from './file.ts'
import { lectureOf } from './lecture.ts'
import type { Saved } from './saved.ts'
import type { Session } from './session.ts'
import { restore, snapshot } from './snapshot.ts'
import { trialsOf } from './trials.ts'
import type { ViewState } from './view-state.ts'

export interface DraftTie {
  /** what was found, for the page to tell and to take up what the session does not hold (settings) */
  readonly found: OpenedDraft
  /** to be called when anything beside the session has changed */
  readonly changed: () => void
  readonly end: () => void
}

export interface DraftWish {
  /** whether a draft that is found goes on the bench */
  readonly takeUp: boolean
  /** gives what the address asks to look at by the time the draft is found, which goes before what the draft looked at */
  readonly asked: () => ViewState
}

interface Beside {
  /** gives what is kept beside the session */
  readonly beside: () => Parameters<typeof snapshot>[1]
}

/** What has been done by the time the draft is found goes before the draft, and is kept in its place. */
export async function keepDraft(
  session: Session,
  draft: Draft,
  { beside = () => ({}), takeUp = true, asked = () => ({}) }: Partial<DraftWish & Beside> = {},
): Promise<DraftTie> {
  const before = work(session)
  const found = await draft.open()
  const isUntouched = isSame(work(session), before)
  if (found.kind === 'draft' && takeUp && isUntouched) {
    const { saved } = found.opened
    await restore(session, { ...saved, view: { ...saved.view, ...asked() } })
  }
  let kept = held(session)
  const changed = () => draft.keep(() => writeFile(snapshot(session, beside(), session.own)))
  if (!isUntouched) changed()
  const look = () => {
    const now = held(session)
    const isAsKept = isSame(now, kept)
    kept = now
    if (!isAsKept) changed()
  }
  const ends = [session, lectureOf(session), trialsOf(session), deskOf(session)].map((each) => each.subscribe(look))
  return { found, changed, end: () => ends.forEach((end) => end()) }
}

function isSame(some: readonly unknown[], others: readonly unknown[]): boolean {
  return some.every((part, index) => part === others[index])
}

/** What somebody would have to do again. */
function work(session: Session): readonly unknown[] {
  const { readings, file, shelf } = deskOf(session).state
  return [session.own.setUp, lectureOf(session).scenes, trialsOf(session).list, readings, file, shelf]
}

/** What a draft holds of a session; playing on changes none of it. */
function held(session: Session): readonly unknown[] {
  const { look, playback } = session.own
  const { view, leftOut, face, measures } = look
  const unit: Saved['view']['unit'] = playback.playing ? undefined : playback.unit
  return [...work(session), view, leftOut, face, measures, unit]
}
