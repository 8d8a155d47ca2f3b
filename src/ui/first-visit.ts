/** Whether this browser has shown the page before; where it keeps nothing, every visit is the first. */
import { browserStorage } from './browser-storage.ts'

const key = 'tackstair first look'

/** Asks once, and remembers that the page has now been seen. Who comes by a link to something is shown just that. */
export function isFirstVisit(hash: string): boolean {
  if (hash.length > 1) return false
  const storage = browserStorage()
  if (!storage) return true
  try {
    if (storage.getItem(key) !== null) return false
    storage.setItem(key, 'seen')
  } catch (error) {
    // A full or blocked storage remembers nothing.
    if (!(error instanceof DOMException)) throw error
  }
  return true
}
