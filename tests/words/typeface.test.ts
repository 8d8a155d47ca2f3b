/** The single file carries the Latin part of the typeface alone, so no word on screen may need the further letters. */
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'

const root = join(import.meta.dirname, '../..')

/** The code points that a typeface's style sheet promises. */
function promised(sheet: string): (letter: string) => boolean {
  const [, list] = /unicode-range:([^;]+);/.exec(readFileSync(join(root, 'src/ui', sheet), 'utf8')) ?? []
  const ranges = list.split(',').map((range) => {
    const [first, last = first] = range.trim().slice(2).split('-')
    return { first: parseInt(first, 16), last: parseInt(last, 16) }
  })
  return (letter) => {
    const point = letter.codePointAt(0) ?? 0
    return ranges.some(({ first, last }) => point >= first && point <= last)
  }
}

const latin = promised('font.css')
const further = promised('font-further.css')

function missing(text: string): string[] {
  return [...new Set(text)].filter((letter) => further(letter) && !latin(letter))
}

test('letters of Polish and Turkish would be missed, those of Spanish would not', () => {
  expect(missing('prześwit, ğ')).toEqual(['ś', 'ğ'])
  expect(missing('¿Cuánta tinta lleva la mantilla? ¡Ñandú, pingüino! «Año»')).toEqual([])
})

test.each(['src/words', 'lessons'])('%s needs no letter that the single file is without', (folder) => {
  const files = readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).filter((path) =>
    /\.(ts|ya?ml|md)$/.test(path),
  )
  expect(files.length).toBeGreaterThan(10)
  const found = files.map((path) => ({ path, letters: missing(readFileSync(join(root, folder, path), 'utf8')) }))
  expect(found.filter(({ letters }) => letters.length > 0)).toEqual([])
})
