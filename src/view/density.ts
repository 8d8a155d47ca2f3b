/** How finely a picture is drawn. */
import type { Size } from './shapes.ts'

/** More pixels than this per px cost time and show nothing more. */
const finest = 2

/**
 * Pixels of one picture. Chosen so that a picture that fills a projector of 3840 x 2160 still moves on a machine without
 * graphics of its own; no picture at print size needs more (ui/tools/picture-file.ts).
 */
const mostPixels = 2_600_000

/** Pixels for each px of a picture of this size. */
export function density({ width, height }: Size): number {
  return Math.min(finest, window.devicePixelRatio, Math.sqrt(mostPixels / (width * height)))
}
