import jsQR from 'jsqr'
import { describe, expect, test } from 'vitest'
import type { QrPicture } from '../../src/report/qr-picture.ts'
import { addressOf, longestPictured, qrPicture } from '../../src/report/qr-picture.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { writeLink } from '../../src/session/link.ts'
import { scenarios } from '../../src/session/scenarios.ts'

/** Pixels a square. */
const scale = 4

/** Draws the path as an SVG renderer would, so that the path itself is what is read. */
function drawn({ size, path }: QrPicture): { pixels: Uint8ClampedArray; width: number } {
  const width = size * scale
  const pixels = new Uint8ClampedArray(4 * width * width).fill(255)
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g)) {
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row++) {
      for (let column = Number(x) * scale; column < (Number(x) + Number(length)) * scale; column++) {
        pixels.set([0, 0, 0], 4 * (row * width + column))
      }
    }
  }
  return { pixels, width }
}

function readBack(address: string): string | undefined {
  const picture = qrPicture(address)
  if (picture === null) return undefined
  const { pixels, width } = drawn(picture)
  return jsQR(pixels, width, width)?.data
}

describe('a QR picture', () => {
  test('is read back, by another program, as the link to a usual set-up', () => {
    const checked = checkSetUp(scenarios.fast)
    if ('problems' in checked) throw new Error(checked.problems[0].message)
    const address = addressOf('https://press.example.org/bench/', writeLink(checked.setUp, { unit: 3 }).text)
    expect(address).toMatch(/^https:\/\/press\.example\.org\/bench\/#v=1&inks=/)
    expect(address?.length).toBeLessThan(longestPictured)
    expect(readBack(address ?? '')).toBe(address)
  })

  test('is made up to 300 characters and no further', () => {
    const longest = `https://example.org/#${'a'.repeat(longestPictured - 21)}`
    expect(longest).toHaveLength(300)
    expect(readBack(longest)).toBe(longest)
    expect(qrPicture(`${longest}a`)).toBeNull()
  })

  test('has a white border four squares wide', () => {
    const picture = qrPicture('https://example.org/')
    if (picture === null) throw new Error('There is no picture.')
    const dark = picture.dark.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [x, y] : [])))
    expect(Math.min(...dark)).toBe(4)
    expect(Math.max(...dark)).toBe(picture.size - 5)
  })
})

test('a page that runs from a file has no address to give', () => {
  expect(addressOf('file:///E:/tackstair.html', '#v=1')).toBeNull()
  expect(addressOf('', '#v=1')).toBeNull()
  expect(addressOf('http://localhost:5173/?x#old', '#v=1')).toBe('http://localhost:5173/?x#v=1')
})
