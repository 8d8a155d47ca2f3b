import { crc32, deflateSync } from 'node:zlib'
import { expect, test } from 'vitest'
import { withDensity } from '../../src/report/png-density.ts'

function chunk(type: string, data: Uint8Array): Buffer {
  const named = Buffer.concat([Buffer.from(type), data])
  const framed = Buffer.alloc(8 + named.length)
  framed.writeUInt32BE(data.length)
  named.copy(framed, 4)
  framed.writeUInt32BE(crc32(named), 4 + named.length)
  return framed
}

/** One grey pixel. */
const png = Buffer.concat([
  Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
  chunk('IHDR', Buffer.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0])),
  chunk('IDAT', deflateSync(Buffer.from([0, 128]))),
  chunk('IEND', Buffer.alloc(0)),
])

interface Chunk {
  type: string
  data: Buffer
}

/** Every chunk with a sound checksum. */
function chunksOf(bytes: Uint8Array): Chunk[] {
  const whole = Buffer.from(bytes)
  const chunks: Chunk[] = []
  for (let at = 8; at < whole.length;) {
    const length = whole.readUInt32BE(at)
    const named = whole.subarray(at + 4, at + 8 + length)
    expect(whole.readUInt32BE(at + 8 + length)).toBe(crc32(named))
    chunks.push({ type: named.subarray(0, 4).toString(), data: named.subarray(4) })
    at += 12 + length
  }
  return chunks
}

test('300 points to the inch are 11811 to the metre, told right after the header', () => {
  const chunks = chunksOf(withDensity(new Uint8Array(png), 300))
  expect(chunks.map(({ type }) => type)).toEqual(['IHDR', 'pHYs', 'IDAT', 'IEND'])
  const { data } = chunks[1]
  expect([data.readUInt32BE(0), data.readUInt32BE(4), data[8]]).toEqual([11811, 11811, 1])
})

test('all else of the picture stays as it was', () => {
  const rest = chunksOf(withDensity(new Uint8Array(png), 300)).filter(({ type }) => type !== 'pHYs')
  expect(rest).toEqual(chunksOf(png))
})
