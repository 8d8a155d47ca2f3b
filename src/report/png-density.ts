/** Tells a PNG how large it is in print: its chunk pHYs (PNG, third edition, 11.3.4.3), right after the header. */

/** Bytes of a PNG's signature and of its header's chunk. */
const afterHeader = 8 + 25
const perMetre = 1000 / 25.4

/** The same picture with so many pixels to the inch written into it. `png` is as a canvas writes it, without such a chunk. */
export function withDensity(png: Uint8Array<ArrayBuffer>, perInch: number): Uint8Array<ArrayBuffer> {
  const density = Math.round(perInch * perMetre)
  const chunk = new Uint8Array(12 + 9)
  const view = new DataView(chunk.buffer)
  view.setUint32(0, 9)
  chunk.set(new TextEncoder().encode('pHYs'), 4)
  view.setUint32(8, density)
  view.setUint32(12, density)
  view.setUint8(16, 1)
  view.setUint32(17, checksum(chunk.subarray(4, 17)))
  const whole = new Uint8Array(png.length + chunk.length)
  whole.set(png.subarray(0, afterHeader))
  whole.set(chunk, afterHeader)
  whole.set(png.subarray(afterHeader), afterHeader + chunk.length)
  return whole
}

/** CRC-32 of ISO 3309, as PNG prescribes it (annex D). */
function checksum(bytes: Uint8Array): number {
  let sum = 0xffffffff
  for (const byte of bytes) {
    sum ^= byte
    for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0)
  }
  return (sum ^ 0xffffffff) >>> 0
}
