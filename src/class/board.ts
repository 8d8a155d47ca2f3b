/** The board of a session: what has been handed in since the page was opened, and the reading that is going on. */
import type { Session } from '../session/session.ts'
import type { HandedFile, ReadingPorts, RefusedFile } from './read-files.ts'
import { readFiles } from './read-files.ts'
import { Roll } from './roll.ts'

export interface BoardState {
  readonly roll: Roll
  readonly refused: readonly RefusedFile[]
  /** files that were read, the refused ones left out */
  readonly files: number
  /** statements in them that told nothing of ours */
  readonly passedOver: number
  /** null where nothing is being read */
  readonly reading: { readonly read: number; readonly all: number } | null
  /** the last reading that was stopped before its end */
  readonly stopped: { readonly read: number; readonly all: number } | null
}

export type BoardPorts = Pick<ReadingPorts, 'now' | 'pause'>

export class ClassBoard {
  #state = nothingRead()
  /** counts readings and stops, so that one that was stopped knows it */
  #turn = 0
  readonly #listeners = new Set<() => void>()

  get state(): BoardState {
    return this.#state
  }

  /** Reads them beside those there are; while a reading goes on nothing else is read. */
  async read(files: readonly HandedFile[], ports: BoardPorts): Promise<void> {
    if (this.#state.reading || files.length === 0) return
    const all = files.length
    const turn = ++this.#turn
    const isCancelled = () => turn !== this.#turn
    const tell = (read: number) => this.#set({ reading: { read, all } })
    tell(0)
    const { roll } = this.#state
    const { read, refused, passedOver } = await readFiles(files, roll, { ...ports, tell, isCancelled })
    // Everything may have been put away meanwhile; what comes late then belongs to nothing.
    if (roll !== this.#state.roll) return
    this.#set({
      refused: [...this.#state.refused, ...refused],
      files: this.#state.files + read - refused.length,
      passedOver: this.#state.passedOver + passedOver,
      reading: null,
      stopped: read < all ? { read, all } : null,
    })
  }

  cancel(): void {
    this.#turn++
  }

  clear(): void {
    this.cancel()
    this.#set(nothingRead())
  }

  /** Calls `listener` after every change; returns what ends that. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  #set(part: Partial<BoardState>): void {
    this.#state = { ...this.#state, ...part }
    for (const listener of this.#listeners) listener()
  }
}

function nothingRead(): BoardState {
  return { roll: new Roll(), refused: [], files: 0, passedOver: 0, reading: null, stopped: null }
}

const boards = new WeakMap<Session, ClassBoard>()

export function boardOf(session: Session): ClassBoard {
  let board = boards.get(session)
  if (!board) boards.set(session, (board = new ClassBoard()))
  return board
}
