/** Lets time count while the page is visible; `left` is called whenever it is hidden. Returns what ends that. */
import type { ActiveTime } from '../session/active-time.ts'

export function countVisible(time: ActiveTime, left: () => void): () => void {
  const follow = () => {
    if (document.visibilityState === 'visible') time.resume()
    else {
      time.pause()
      left()
    }
  }
  follow()
  document.addEventListener('visibilitychange', follow)
  return () => {
    document.removeEventListener('visibilitychange', follow)
    time.pause()
  }
}
