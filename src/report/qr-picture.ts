/** A link as a QR picture (ISO/IEC 18004) that a phone reads from the projector; geometry only, drawn by whoever shows it. */
import { encode } from 'uqr'

/** Characters: a longer address makes squares too small to be read from the back of a room. */
export const longestPictured = 300

/** Squares left white on each side, as the standard asks. */
const quietZone = 4

export interface QrPicture {
  /** width and height in squares, the white border included */
  readonly size: number
  /** by row, true for dark */
  readonly dark: readonly (readonly boolean[])[]
  /** the dark squares as the data of one SVG path, one unit a square */
  readonly path: string
}

/** Null where the address is too long for a picture. */
export function qrPicture(address: string): QrPicture | null {
  if (address.length > longestPictured) return null
  const { size, data } = encode(address, { ecc: 'M', border: quietZone })
  return { size, dark: data, path: data.map(rowPath).join('') }
}

/** One bar for each run of dark squares, so that no hair lines show between them. */
function rowPath(row: readonly boolean[], y: number): string {
  const runs = row
    .map((dark) => (dark ? '1' : '0'))
    .join('')
    .matchAll(/1+/g)
  return Array.from(runs, ({ 0: run, index }) => `M${index} ${y}h${run.length}v1h-${run.length}z`).join('')
}

/**
 * The address of the page with a link's text behind it; null where the page has no public address, as when it runs from
 * a file, and one has to be asked for.
 */
export function addressOf(page: string, link: string): string | null {
  if (!URL.canParse(page)) return null
  const url = new URL(page)
  if (url.protocol !== 'https:' && url.protocol !== 'http:') return null
  url.hash = link
  return url.href
}
