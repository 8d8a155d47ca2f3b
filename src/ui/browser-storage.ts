/** The browser's storage for this page, or null where it is blocked: then it throws when it is only looked at. */
export function browserStorage(): Storage | null {
  return ofVisit ?? ownStorage()
}

export function ownStorage(): Storage | null {
  try {
    return window.localStorage
  } catch (error) {
    if (error instanceof DOMException) return null
    throw error
  }
}

let ofVisit: Storage | null = null

/** While a learning system has the page, what is learned goes to its own place, so that learners do not mix. */
export function keepForVisit(storage: Storage): void {
  ofVisit = storage
}

export function isVisit(): boolean {
  return ofVisit !== null
}
