/** Dresses the whole page as the person wants it: its colours, and whether anything in it glides. */
import { forgetPicture } from './bench-picture.ts'
import { comfort } from './comfort.ts'
import { prefersStill } from './motion.ts'

/** The colours of tokens.css. */
export type Dress = 'light' | 'dark' | 'contrast light' | 'contrast dark'

const systemAsks = [
  '(prefers-color-scheme: dark)',
  '(prefers-contrast: more)',
  '(forced-colors: active)',
  '(prefers-reduced-motion: reduce)',
]

export function dressWanted(): Dress {
  const { theme = 'auto' } = comfort().settings
  const [dark, more, forced] = systemAsks.map((query) => window.matchMedia(query).matches)
  // Where the system sets all colours itself, what is drawn on a canvas follows with the strongest there are: a theme
  // chosen here would be drawn upon the system's ground.
  if (!forced && (theme === 'light' || theme === 'dark')) return theme
  const scheme = dark ? 'dark' : 'light'
  return theme === 'high contrast' || more || forced ? `contrast ${scheme}` : scheme
}

/** What the document tells whoever has drawn in the colours of before. */
export const dressed = 'dressed'

/** Dresses the page now and whenever the person or their system wants it otherwise, and then calls `changed`. */
export function keepDressed(changed: () => void): () => void {
  dressPage()
  const again = () => {
    dressPage()
    forgetPicture()
    changed()
    document.dispatchEvent(new Event(dressed))
  }
  const queries = systemAsks.map((query) => window.matchMedia(query))
  for (const query of queries) query.addEventListener('change', again)
  const unsubscribe = comfort().subscribe(again)
  return () => {
    for (const query of queries) query.removeEventListener('change', again)
    unsubscribe()
  }
}

function dressPage(): void {
  const { dataset } = document.documentElement
  dataset['dress'] = dressWanted()
  dataset['motion'] = prefersStill() ? 'still' : 'moving'
}
