/** The draft of the page and what became of it. The code that keeps it is fetched once the page is up. */
import type { Draft } from '../../session/draft.ts'
import type { DraftState } from '../../session/draft-shelf.ts'
import type { DraftWish } from '../../session/keep-draft.ts'
import type { Session } from '../../session/session.ts'
import type * as SetAside from '../../session/set-aside.ts'
import { isVisit, ownStorage } from '../browser-storage.ts'
import { didNotArrive } from '../did-not-arrive.ts'

export type DraftNews = DraftState | 'opening' | 'empty' | 'not loaded'

/** What was kept and cannot be read: the texts, and why the draft cannot as far as that is known. */
export interface Aside {
  readonly draft: string | null
  readonly work: string | null
  readonly reason: string | null
}

export class PageDraft {
  #draft: Draft | null = null
  #news: DraftNews = 'opening'
  /** why the draft that was found cannot be read; null where none was found or it could */
  #unreadable: string | null = null
  /** the code that looks after work that cannot be read, once it is there */
  #work: typeof SetAside | null = null
  readonly #listeners = new Set<() => void>()

  get news(): DraftNews {
    return this.#news
  }

  get aside(): Aside | null {
    const draft = this.#draft?.setAside ?? null
    const storage = ownStorage()
    const work = storage && this.#work ? this.#work.workSetAside(storage) : null
    return draft === null && work === null ? null : { draft, work, reason: this.#unreadable }
  }

  dropAside(): void {
    this.#draft?.dropSetAside()
    const storage = ownStorage()
    if (storage) this.#work?.dropWorkSetAside(storage)
    this.#tell()
  }

  /** Call once. */
  async begin(session: Session, wish: DraftWish): Promise<void> {
    try {
      const [work, { Draft }, { keepDraft }, { draftPorts }] = await Promise.all([
        import('../../session/set-aside.ts'),
        import('../../session/draft.ts'),
        import('../../session/keep-draft.ts'),
        import('../draft-ports.ts'),
      ])
      const storage = ownStorage()
      if (storage) work.setUnreadableAside(storage)
      this.#work = work
      const draft = new Draft(draftPorts(), (news) => this.#become(news))
      this.#draft = draft
      const { found } = await keepDraft(session, draft, wish)
      if (found.kind === 'unreadable') this.#unreadable = found.reason
      // What was just taken up is in the storage as it stands here; otherwise nothing has been done yet.
      const asFound = found.kind === 'draft' && wish.takeUp ? 'saved' : 'empty'
      this.#become(draft.state === 'not saved' ? asFound : draft.state)
    } catch (error) {
      if (!didNotArrive(error)) throw error
      this.#become('not loaded')
    }
  }

  /** Writes at once what waits to be written, as when the page is left. */
  flush(): void {
    this.#draft?.flush()
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  #become(news: DraftNews): void {
    this.#news = news
    this.#tell()
  }

  #tell(): void {
    for (const listener of this.#listeners) listener()
  }
}

const drafts = new WeakMap<Session, PageDraft>()

/** The one draft of this session. */
export function draftOf(session: Session): PageDraft {
  let draft = drafts.get(session)
  if (!draft) drafts.set(session, (draft = new PageDraft()))
  return draft
}

/**
 * A page inside another shows what that one asks for, and keeps no draft; nor does one that a learning system has opened,
 * perhaps for one learner after another.
 */
export function keepsNoDraft(): boolean {
  return window.parent !== window || isVisit()
}

/** Keeps a draft from now on, where one is kept. */
export async function beginDraft(session: Session, wish: DraftWish): Promise<void> {
  if (keepsNoDraft()) return
  const draft = draftOf(session)
  addEventListener('pagehide', () => draft.flush())
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') draft.flush()
  })
  await draft.begin(session, wish)
}
