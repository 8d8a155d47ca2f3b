/**
 * The draft: what is on the bench, kept in the browser so that a closed page or a dead battery loses nothing.
 *
 * Every tab keeps a draft of its own, under a key with the tab's id, so two tabs can never overwrite each other. A tab
 * holds its id for as long as it lives (the port `hold`, in a browser a Web Lock) and keeps it over a reload (in session
 * storage). A tab that was copied along with its session storage finds its id held and takes a new one. A new tab takes up
 * the newest draft that no living tab holds. Where ids cannot be held, every load of the page takes a new one. And a tab
 * looks before it writes: if its draft is not as it left it, another has written there, and it goes on under a new id.
 *
 * What is taken up is copied: the old draft goes only once the copy has been saved, and where ids cannot be held it stays.
 *
 * A draft is written a moment after the last change and read back. One that cannot be read is moved aside, so that its
 * text can still be had, and the page starts afresh.
 */
import type { DraftRecord } from './draft-record.ts'
import { readRecord, writeRecord } from './draft-record.ts'
import type { DraftShelf, DraftState } from './draft-shelf.ts'
import type { Opened } from './file.ts'
import { readFile } from './file.ts'

/** What of the browser a draft needs, handed in. */
export interface DraftPorts {
  /** null where the browser keeps nothing for this page */
  readonly shelf: DraftShelf | null
  /** a new id, unlike any other */
  readonly newId: () => string
  /** the id this tab had before it was reloaded */
  readonly lastId: string | null
  readonly rememberId: (id: string) => void
  /** whether ids can be held in this browser */
  readonly canHold: boolean
  /** holds the id until the tab is gone; false where another living tab holds it */
  readonly hold: (id: string) => Promise<boolean>
  /** whether a living tab holds the id */
  readonly isHeld: (id: string) => Promise<boolean>
  /** ms since 1970 */
  readonly now: () => number
  /** calls after so many ms; returns what takes that back */
  readonly later: (call: () => void, ms: number) => () => void
}

export type OpenedDraft =
  | { kind: 'none' }
  | { kind: 'draft'; savedAt: number; opened: Extract<Opened, { saved: unknown }> }
  /** why it cannot be opened; its text is set aside */
  | { kind: 'unreadable'; reason: string }

/** ms from the last change to its writing: long enough that a slider writes once, short enough to lose nothing. */
export const draftDelay = 800

const damaged = 'The text of the draft is damaged.'

/** Drafts kept of tabs that are gone; older ones give way. Ten times as many where a tab that lives cannot be told. */
export const draftsKept = 5

export class Draft {
  readonly #ports: DraftPorts
  readonly #tell: (state: DraftState) => void
  #state: DraftState
  #id = ''
  /** what this tab last left under its key; null where nothing is there */
  #left: string | null = null
  #pending: { text: () => string; cancel: () => void } | null = null
  /** the draft of another tab that was taken up, as it was then */
  #takenUp: { id: string; text: string } | null = null

  /** `tell` is called with the state whenever it changes. */
  constructor(ports: DraftPorts, tell: (state: DraftState) => void = () => undefined) {
    this.#ports = ports
    this.#tell = tell
    this.#state = ports.shelf?.probe() ?? 'storage blocked'
  }

  get state(): DraftState {
    return this.#state
  }

  /** Finds this tab's draft, or the newest that no living tab holds. Call once, before anything else. */
  async open(): Promise<OpenedDraft> {
    const { shelf, lastId, canHold, hold, newId } = this.#ports
    const isOwn = lastId !== null && canHold && (await hold(lastId))
    this.#id = isOwn ? lastId : newId()
    if (!isOwn) await hold(this.#id)
    this.#left = shelf?.read(this.#id) ?? null
    if (!shelf) return { kind: 'none' }
    const orphans = await this.#orphans(shelf)
    for (const { id } of orphans.slice(canHold ? draftsKept : 10 * draftsKept)) shelf.remove(id)
    const before = lastId !== null && (isOwn || !canHold) && shelf.read(lastId) !== null ? lastId : null
    const found = before ?? orphans.at(0)?.id
    return found === undefined ? { kind: 'none' } : this.#take(shelf, found)
  }

  /** Keeps what `text` gives (the text of a file), a moment after the last call. */
  keep(text: () => string): void {
    this.#pending?.cancel()
    const cancel = this.#ports.later(() => this.flush(), draftDelay)
    this.#pending = { text, cancel }
    if (this.#state === 'saved') this.#become('not saved')
  }

  /** Writes at once what waits to be written, as when the page is left. */
  flush(): void {
    const pending = this.#pending
    if (!pending) return
    pending.cancel()
    this.#pending = null
    this.#write(pending.text())
  }

  /** The text of the last draft that could not be read, to be saved as a file by hand; null where there is none. */
  get setAside(): string | null {
    return this.#ports.shelf?.setAside ?? null
  }

  /** Throws that text away, once it has been saved or is not wanted. */
  dropSetAside(): void {
    this.#ports.shelf?.putAside(null)
  }

  /** Forgets this tab's draft. */
  forget(): void {
    this.#pending?.cancel()
    this.#pending = null
    if (this.#isAsLeft()) this.#ports.shelf?.remove(this.#id)
    this.#left = null
  }

  /** Drafts that no living tab holds, the newest first. */
  async #orphans(shelf: DraftShelf): Promise<{ id: string; savedAt: number }[]> {
    const ids = shelf.ids().filter((id) => id !== this.#id)
    const held = await Promise.all(ids.map((id) => this.#ports.isHeld(id)))
    return ids
      .filter((_, index) => !held[index])
      .map((id) => ({ id, savedAt: readRecord(shelf.read(id) ?? '')?.savedAt ?? 0 }))
      .sort((a, b) => b.savedAt - a.savedAt)
  }

  #take(shelf: DraftShelf, id: string): OpenedDraft {
    const text = shelf.read(id) ?? ''
    const record = readRecord(text)
    const opened = record ? readFile(record.file) : null
    if (record && opened && 'saved' in opened) {
      if (id !== this.#id) this.#takenUp = { id, text }
      return { kind: 'draft', savedAt: record.savedAt, opened }
    }
    shelf.remove(id)
    shelf.putAside(record?.file ?? text)
    if (id === this.#id) this.#left = null
    return { kind: 'unreadable', reason: opened && 'refused' in opened ? opened.refused.message : damaged }
  }

  #write(file: string): void {
    const { shelf, now, newId } = this.#ports
    if (!shelf) return
    if (!this.#isAsLeft()) {
      // Another tab writes here too; what it wrote stays, and this one goes on elsewhere.
      this.#id = newId()
      this.#left = null
      void this.#ports.hold(this.#id)
    }
    this.#ports.rememberId(this.#id)
    const record: DraftRecord = { savedAt: now(), file }
    const text = writeRecord(record)
    const state = shelf.write(this.#id, text)
    this.#left = shelf.read(this.#id)
    this.#become(state === 'saved' && this.#left !== text ? 'storage blocked' : state)
    if (this.#state === 'saved') this.#dropTakenUp(shelf)
  }

  /** Only where it is known that nobody else lives off it. */
  #dropTakenUp(shelf: DraftShelf): void {
    if (this.#takenUp && this.#ports.canHold && shelf.read(this.#takenUp.id) === this.#takenUp.text)
      shelf.remove(this.#takenUp.id)
    this.#takenUp = null
  }

  #isAsLeft(): boolean {
    return (this.#ports.shelf?.read(this.#id) ?? null) === this.#left
  }

  #become(state: DraftState): void {
    if (state === this.#state) return
    this.#state = state
    this.#tell(state)
  }
}
