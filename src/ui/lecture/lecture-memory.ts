/** What outlives a reload of the window that shows a lecture: which lecture it is to its speaker's window, and when it began. */
import { newId } from '../draft-ports.ts'

const key = 'tackstair lecture'

export interface Begun {
  readonly id: string
  /** ms since 1970 */
  readonly began: number
}

/** The lecture going on in this tab. */
export function goingOn(): Begun | null {
  const text = attempt((storage) => storage.getItem(key))
  const [id = '', began = ''] = text?.split(' ') ?? []
  return id !== '' && Number.isFinite(Number(began)) && began !== '' ? { id, began: Number(began) } : null
}

export function begin(now: number): Begun {
  const begun = { id: newId(), began: now }
  attempt((storage) => storage.setItem(key, `${begun.id} ${begun.began}`))
  return begun
}

export function endLecture(): void {
  attempt((storage) => storage.removeItem(key))
}

/** Where the browser keeps nothing, a reload begins anew. */
function attempt<Result>(touch: (storage: Storage) => Result): Result | null {
  try {
    return touch(window.sessionStorage)
  } catch (error) {
    if (error instanceof DOMException) return null
    throw error
  }
}
