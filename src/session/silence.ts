/**
 * Notices a worker that says nothing any more. A browser short of memory may end one, and no event tells. The work is then
 * done in the page, as where no worker starts at all.
 */

/** ms: chosen so that the longest task between two words, a drill (about 1 s of a free processor), has time on any computer. */
const patience = 60_000

export interface Silence {
  /** something has been asked, or said: counts anew from now */
  wait: () => void
  /** nothing is waited for */
  stop: () => void
}

/** `broken` is called once a worker that was waited for has said nothing for too long. */
export function silence(broken: () => void): Silence {
  let timer: ReturnType<typeof setTimeout> | undefined
  const stop = () => clearTimeout(timer)
  return {
    wait: () => {
      stop()
      timer = setTimeout(broken, patience)
    },
    stop,
  }
}
