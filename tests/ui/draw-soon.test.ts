import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { drawNoMore, drawSoon } from '../../src/ui/draw-soon.ts'

let frames: (() => void)[] = []
let now = 0

beforeEach(() => {
  frames = []
  now = 0
  vi.stubGlobal('requestAnimationFrame', (call: () => void) => frames.push(call))
  vi.spyOn(performance, 'now').mockImplementation(() => now)
})
afterEach(() => {
  vi.unstubAllGlobals()
  vi.restoreAllMocks()
})

function nextFrame(): void {
  for (const call of frames.splice(0)) call()
}

it('draws all in one frame where that is quick, each once however often it was asked for', () => {
  const drawn: string[] = []
  const line = () => drawn.push('line')
  const section = () => drawn.push('section')
  for (const draw of [line, section, line]) drawSoon(draw)
  nextFrame()
  expect(drawn).toEqual(['line', 'section'])
  expect(frames).toEqual([])
})

it('leaves for the next frame what would take too long, and nobody waits for ever', () => {
  const drawn: string[] = []
  const slowly = (name: string) => () => {
    drawn.push(name)
    now += 100
    drawSoon(slow[name])
  }
  const slow: Record<string, () => void> = { line: slowly('line'), section: slowly('section') }
  Object.values(slow).forEach(drawSoon)
  for (let frame = 0; frame < 4; frame++) nextFrame()
  expect(drawn).toEqual(['line', 'section', 'line', 'section'])
  Object.values(slow).forEach(drawNoMore)
  nextFrame()
})

it('leaves out what is gone before its turn', () => {
  const draw = vi.fn()
  drawSoon(draw)
  drawNoMore(draw)
  nextFrame()
  expect(draw).not.toHaveBeenCalled()
})
