import { expect, test } from 'vitest'
import { openingAt, pullGrown } from '../../src/view/nip-curve.ts'
import { sectionDrawing } from '../../src/view/section-drawing.ts'
import { pictureOf, setUpOf } from './a-picture.ts'

const desk = { width: 860, height: 330 }
const picture = pictureOf(setUpOf([16, 14, 12, 10]))

/** Foot, tip and place (px) of the arrow, which alone has seven corners and the colour of writing; null where there is none. */
function arrowAt(phase: number, size = desk): { foot: number; tip: number; x: number } | null {
  const { graphite, ground } = picture.theme
  const arrows = sectionDrawing({ ...picture, phase }, size).flatMap((shape) =>
    shape.kind === 'outline' && shape.points.length === 14 && shape.fill === graphite && shape.line === ground
      ? [shape.points]
      : [],
  )
  expect(arrows.length).toBeLessThanOrEqual(1)
  if (arrows.length === 0) return null
  const [points] = arrows
  const heights = points.filter((_, i) => i % 2 === 1)
  return { foot: Math.max(...heights), tip: Math.min(...heights), x: points[8] }
}

const moments = Array.from({ length: 51 }, (_, i) => i / 50)

test('nothing pulls before the films touch, nor after the whole section has parted', () => {
  expect(arrowAt(0)).toBeNull()
  for (const phase of moments) {
    const pulls = pullGrown(phase) > 0 && openingAt(phase) > 0
    expect(arrowAt(phase) !== null, `at ${phase}`).toBe(pulls)
  }
})

test('the arrow points up from where the stack parts, grows with the pull, and goes where the parting goes', () => {
  const drawn = moments.flatMap((phase) => {
    const arrow = arrowAt(phase)
    return arrow ? [{ phase, ...arrow }] : []
  })
  expect(drawn.length).toBeGreaterThan(10)
  for (const { foot, tip, x } of drawn) {
    expect(tip).toBeLessThan(foot)
    expect(tip).toBeGreaterThan(0)
    expect(foot).toBeLessThan(desk.height)
    expect(x).toBeGreaterThan(0)
    expect(x).toBeLessThan(desk.width)
  }
  for (let i = 1; i < drawn.length; i++) expect(drawn[i].x).toBeLessThanOrEqual(drawn[i - 1].x)
  // As long as the pull has grown, where the blanket has not begun to leave.
  const closed = drawn.filter(({ phase }) => phase < 0.5)
  const full = arrowAt(0.5)
  if (!full) throw new Error('There is no arrow as the nip opens.')
  expect(closed.length).toBeGreaterThan(2)
  for (const { phase, foot, tip } of closed)
    expect((foot - tip) / (full.foot - full.tip)).toBeCloseTo(pullGrown(phase) / pullGrown(0.5), 1)
})

test('in the smallest section the arrow keeps clear of the blanket’s name', () => {
  const small = { width: 300, height: 220 }
  const name = sectionDrawing({ ...picture, phase: 0.5 }, small).find(
    (shape) => shape.kind === 'lettering' && shape.text === 'blanket',
  )
  const arrow = arrowAt(0.5, small)
  if (name?.kind !== 'lettering' || !arrow) throw new Error('There is no name or no arrow.')
  expect(arrow.tip).toBeGreaterThan(name.y + name.size / 2)
})
