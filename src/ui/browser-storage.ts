/** The browser's storage for this page, or null where it is blocked: then it throws when it is only looked at. */
export function browserStorage(): Storage | null {
  try {
    return window.localStorage
  } catch (error) {
    if (error instanceof DOMException) return null
    throw error
  }
}
