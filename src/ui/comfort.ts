/** The one record of what suits the person at this page, and what the page has to do about it. */
import { Comfort, comfortKey } from '../session/comfort.ts'
import { browserStorage } from './browser-storage.ts'

let made: Comfort | undefined

export function comfort(): Comfort {
  if (made) return made
  const opened = new Comfort(browserStorage())
  // Browsers tell a page of what its other tabs have written; a key of null is a storage that was emptied.
  window.addEventListener('storage', ({ key }) => {
    if (key === comfortKey || key === null) opened.lookAgain()
  })
  return (made = opened)
}
