import { expect, test } from 'vitest'
import { heavier, rectangle, stroke } from '../../src/view/shapes.ts'
import type { Shape } from '../../src/view/shapes.ts'

test('lines and outlines become as much heavier as is wanted, films and fills do not', () => {
  const film: Shape = { kind: 'arc', x: 0, y: 0, radius: 9, from: 0, to: 1, line: 0xff0000, width: 3 }
  const filled = rectangle(0, 0, 4, 4, { fill: 0x00ff00 })
  const outlined: Shape = { kind: 'disc', x: 0, y: 0, radius: 5, line: 0x000000 }
  const drawn = heavier([film, filled, outlined, stroke([0, 0, 1, 1], 0x000000, 1.5)], 2)
  expect(drawn.slice(0, 2)).toEqual([film, filled])
  expect(drawn.slice(2)).toMatchObject([{ width: 2 }, { width: 3 }])
})
