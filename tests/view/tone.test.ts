import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { hallOf, rubberOf } from '../../src/view/tone.ts'

const tokens = readFileSync(new URL('../../src/ui/tokens.css', import.meta.url), 'utf8')

/** The colours that a dress sets, the light ones beneath. */
function dress(name: string): (token: string) => number {
  const own = name === 'light' ? '' : (tokens.split(`:root[data-dress='${name}'] {`)[1]?.split('}')[0] ?? '')
  return (token) => {
    const [, hex] =
      new RegExp(`--${token}: #(\\w{6})`).exec(own) ?? new RegExp(`--${token}: #(\\w{6})`).exec(tokens) ?? []
    return parseInt(hex, 16)
  }
}

/** WCAG 2.2, relative luminance and contrast ratio. */
function luminance(colour: number): number {
  const [r, g, b] = [16, 8, 0].map((shift) => {
    const part = ((colour >> shift) & 255) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

function contrast(one: number, other: number): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a)
  return (light + 0.05) / (dark + 0.05)
}

test.each(['light', 'dark', 'contrast light', 'contrast dark'])(
  'letters are read on the pictures’ grounds, %s',
  (name) => {
    const token = dress(name)
    const theme = { ground: token('panel'), line: token('line'), graphite: token('graphite') }
    expect(contrast(theme.graphite, rubberOf(theme)), 'on the blanket').toBeGreaterThan(4.5)
    expect(contrast(theme.graphite, hallOf(theme)), 'behind the press line').toBeGreaterThan(4.5)
  },
)
