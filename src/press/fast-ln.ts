/** ln of a 32-bit float from its bits: exponent plus a table over the mantissa. */

const mantissaBits = 11
const table = Float32Array.from({ length: 1 << mantissaBits }, (_, i) => Math.log(1 + (i + 0.5) / (1 << mantissaBits)))

/** ln of the positive, normal 32-bit float whose bits are `bits`; wrong by at most 2.5e-4. */
export function lnOfBits(bits: number): number {
  return ((bits >> 23) - 127) * Math.LN2 + table[(bits >> (23 - mantissaBits)) & ((1 << mantissaBits) - 1)]
}
