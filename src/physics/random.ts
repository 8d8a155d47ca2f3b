/**
 * The one source of chance in the model. Counter-based: the draw belongs to (seed, stream, index), so a cell
 * keeps its draw whatever else is computed, and in whatever order.
 */

/**
 * Scrambles 32 bits (the "lowbias32" finaliser, C. Wellons, public domain, 2018).
 * Errors: none. Range in and out: any 32-bit integer.
 */
function scramble(bits: number): number {
  let h = bits | 0
  h = Math.imul(h ^ (h >>> 16), 0x7feb352d)
  h = Math.imul(h ^ (h >>> 15), 0x846ca68b)
  return (h ^ (h >>> 16)) >>> 0
}

/** A uniform draw in the open interval (0, 1) for `index` of `stream` under `seed`; all three are integers. */
export function uniformAt(seed: number, stream: number, index: number): number {
  const key = scramble(seed ^ scramble(Math.imul(stream + 1, 0x9e3779b9)))
  const high = scramble(index ^ key)
  const low = scramble(high ^ 0x5bf03635)
  return (high * 0x200000 + (low >>> 11) + 0.5) / 0x20000000000000
}

/** Two independent standard normal draws (Box and Muller, 1958) for `index` of `stream` under `seed`. */
export function normalPairAt(seed: number, stream: number, index: number): [number, number] {
  const radius = Math.sqrt(-2 * Math.log(uniformAt(seed, stream, 2 * index)))
  const angle = 2 * Math.PI * uniformAt(seed, stream, 2 * index + 1)
  return [radius * Math.cos(angle), radius * Math.sin(angle)]
}

/** A running series of uniform draws in (0, 1), for code that only ever draws in one order. */
export function seededDraws(seed: number, stream = 0): () => number {
  let index = 0
  return () => uniformAt(seed, stream, index++)
}
