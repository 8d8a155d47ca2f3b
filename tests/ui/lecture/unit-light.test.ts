import { expect, test } from 'vitest'
import { lightHolds, unitLight } from '../../../src/ui/lecture/unit-light.ts'
import { lineDrawing } from '../../../src/view/line-drawing.ts'
import { lineLayout } from '../../../src/view/line-layout.ts'
import { textWidth } from '../../../src/view/shapes.ts'
import { unitParts } from '../../../src/view/unit-shapes.ts'
import { pictureOf, setUpOf } from '../../view/a-picture.ts'

const sizes = [
  { width: 528, height: 287 },
  { width: 705, height: 287 },
  { width: 733, height: 290 },
  { width: 1086, height: 190 },
  { width: 240, height: 200 },
]

for (const units of [2, 4, 8])
  for (const size of sizes)
    test(`in ${size.width} x ${size.height} px the light on each of ${units} units holds all of that unit, its name too, and no other’s`, () => {
      const setUp = setUpOf(Array.from({ length: units }, (_, unit) => 16 - unit))
      const names = setUp.inks.map((_, unit) => `${unit + 1} magenta`)
      const picture = pictureOf(setUp)
      const layout = lineLayout(size, names, false)
      const drawn = lineDrawing({ ...picture, words: { ...picture.words, units: names } }, size)
      const shown = drawn.filter((shape) => shape.kind === 'lettering' && /^([1-8]|[A-H]$)/.test(shape.text))
      expect(shown).toHaveLength(units)
      for (let lit = 0; lit < units; lit++) {
        const light = unitLight(layout, lit, names[lit])
        shown.forEach((name, unit) => {
          if (name.kind !== 'lettering') return
          const ends = [name.x - layout.letters, name.x + textWidth(name.text, name.size)]
          const held = ends.map((x) => lightHolds(light, x, name.y))
          expect(held, `${name.text} in the light of unit ${lit + 1}`).toEqual(held.map(() => unit === lit))
        })
        const { plate, blanket, impression, dampening } = unitParts(picture, lit, lit, layout)
        for (const part of [plate, blanket, impression, dampening])
          if (part) expect(lightHolds(light, part.x, part.y)).toBe(true)
        for (const other of [lit - 1, lit + 1].filter((unit) => unit >= 0 && unit < units)) {
          const { blanket, impression } = unitParts(picture, other, other, layout)
          for (const { x, y, radius } of [blanket, impression])
            for (const side of [-radius, radius]) expect(lightHolds(light, x + side, y)).toBe(false)
        }
      }
    })
