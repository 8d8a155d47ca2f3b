import { expect, test } from 'vitest'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { Colours } from '../../src/session/colours.ts'
import { spotInks } from '../../src/session/spot-inks.ts'

function coloursOf(inks: object[]): Colours {
  const checked = checkSetUp({ inks })
  if ('problems' in checked) throw new Error(checked.problems[0].message)
  return new Colours(checked.setUp)
}

/** Largest difference of red, green and blue, of 255. */
function apart(one: string, other: string): number {
  return Math.max(...[1, 3, 5].map((at) => Math.abs(byte(one, at) - byte(other, at))))
}

function byte(hex: string, at: number): number {
  return Number.parseInt(hex.slice(at, at + 2), 16)
}

test('each spot ink that comes with the program looks on coated paper as its swatch says', () => {
  const { solids } = coloursOf([...spotInks])
  spotInks.forEach(({ colour }, ink) => expect(apart(solids[ink], String(colour))).toBeLessThanOrEqual(2))
})

test('a painted picture has the colours of single readings', () => {
  const colours = coloursOf([
    { name: 'cyan', tack: 14 },
    { name: 'yellow', tack: 10 },
  ])
  const amounts = [
    [0, 0],
    [1.1, 0],
    [0, 0.8],
    [1, 1],
  ]
  const pixels = new Uint8ClampedArray(4 * amounts.length)
  colours.paint(
    [0, 1].map((ink) => Float32Array.from(amounts, (cell) => cell[ink])),
    pixels,
  )
  amounts.forEach((cell, at) => {
    const painted = `#${Array.from(pixels.subarray(4 * at, 4 * at + 3), (part) => part.toString(16).padStart(2, '0')).join('')}`
    expect(apart(painted, colours.of(cell))).toBeLessThanOrEqual(3)
  })
})

test('an ink without a colour is grey, not an error', () => {
  const colours = coloursOf([
    { name: 'cyan', tack: 14 },
    { name: 'mystery', tack: 10 },
  ])
  const [, mystery] = colours.solids
  expect(mystery).toMatch(/^#(..)\1\1$/)
  expect(colours.of([0.5, 1])).toMatch(/^#[0-9a-f]{6}$/)
})

test('a picture does not depend on the order in which its inks are loaded', () => {
  const inks = [
    { name: 'yellow', tack: 14 },
    { name: 'magenta', tack: 12 },
    { name: 'cyan', tack: 10 },
  ]
  const films = [0.9, 0.4, 0.7].map((um) => Float32Array.of(um))
  const painted = [0, 1, 2].map((turn) => {
    const order = [0, 1, 2].map((place) => (place + turn) % 3)
    const pixels = new Uint8ClampedArray(4)
    coloursOf(order.map((ink) => inks[ink])).paint(
      order.map((ink) => films[ink]),
      pixels,
    )
    return Array.from(pixels)
  })
  expect(painted[1]).toEqual(painted[0])
  expect(painted[2]).toEqual(painted[0])
})
