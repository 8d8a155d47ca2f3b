/** The whole screen for a lecture, and Escape with it where the browser leaves it to the page. */

/** Into full screen or out of it; false where the browser does not let the page in. */
export async function turnFullScreen(): Promise<boolean> {
  if (document.fullscreenElement) {
    await document.exitFullscreen()
    return true
  }
  try {
    await document.documentElement.requestFullscreen()
    await keepEscape()
    return true
  } catch (error) {
    // Refused, or not there at all, as on some phones.
    if (!(error instanceof TypeError || error instanceof DOMException)) throw error
    return false
  }
}

/** Browsers that can leave Escape to the page do so, and one press leaves full screen and lecture; in others it takes two. */
async function keepEscape(): Promise<void> {
  const { keyboard } = navigator as Navigator & { keyboard?: { lock: (keys: string[]) => Promise<void> } }
  try {
    await keyboard?.lock(['Escape'])
  } catch (error) {
    // Refused within a frame: there it takes two as well.
    if (!(error instanceof DOMException)) throw error
  }
}
