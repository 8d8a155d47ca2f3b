/** How finely a picture is drawn. */
import type { Size } from './shapes.ts'

/** More pixels than this per px cost time and show nothing more. */
const finest = 2

/**
 * Pixels of one picture. Chosen so that a picture that fills a projector of 3840 x 2160 is still drawn fluently by a
 * machine without graphics of its own; from the first row on it looks the same.
 */
const mostPixels = 3_700_000

/** Pixels for each px of a picture of this size. */
export function density({ width, height }: Size): number {
  return Math.min(finest, window.devicePixelRatio, Math.sqrt(mostPixels / (width * height)))
}
