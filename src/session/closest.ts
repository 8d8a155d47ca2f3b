/** The name that was probably meant. */
import { distance } from 'fastest-levenshtein'

/** Letters beyond which nothing can be near, so that a long text costs nothing. */
const longest = 40

/** The nearest of the names, or "none" where none is near. */
export function closestOf(given: string, names: readonly string[]): string {
  if (given === '' || given.length > longest) return 'none'
  const near = names
    .map((name) => ({ name, off: distance(given.toLowerCase(), name.toLowerCase()) }))
    .filter(({ name, off }) => off <= Math.ceil(Math.min(given.length, name.length) / 3))
  return near.sort((a, b) => a.off - b.off).at(0)?.name ?? 'none'
}
