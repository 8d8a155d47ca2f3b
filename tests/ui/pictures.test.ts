// @vitest-environment jsdom
import { expect, test } from 'vitest'
import { roundPicture } from '../../src/ui/pictures/round-picture.ts'
import { sideBySide } from '../../src/ui/pictures/side-by-side.ts'
import { stairsForPaper } from '../../src/ui/pictures/stairs-for-paper.ts'
import type { Drawing } from '../../src/view/svg-file.ts'
import { svgFile } from '../../src/view/svg-file.ts'

function fileOf(drawing: Drawing): Element {
  const text = svgFile(drawing, { title: 'A', description: 'B', lines: [] }, 170)
  const { documentElement } = new DOMParser().parseFromString(text, 'image/svg+xml')
  expect(documentElement.querySelector('parsererror')?.textContent).toBeUndefined()
  return documentElement
}

const wordsIn = (svg: Element) => [...svg.querySelectorAll('text')].map(({ textContent }) => textContent)
const treads = [16, 8].map((tack, at) => ({ letter: 'KC'[at], tack, colour: '#2a2a2a' }))

test('a list of orders is a stair for each, with all its words inside the picture', () => {
  const long = Array.from({ length: 30 }, (_, at) => `word${String(at)}`).join(' ')
  const drawing = stairsForPaper([
    { place: '1', treads, title: 'black, cyan', lines: ['score: 90'] },
    { place: '2', treads: [...treads].reverse(), title: long, lines: [long] },
  ])
  const svg = fileOf(drawing)
  expect(wordsIn(svg).join(' ')).toBe(`1 K C black, cyan score: 90 2 C K ${long} ${long}`)
  const [first, , second] = [...svg.querySelectorAll('rect[fill="#ffffff"][stroke]')].map((rect) =>
    Number(rect.getAttribute('height')),
  )
  // 18 px of letters and 34 px at the highest tack: half the tack is 18 + 17.
  expect([first, second]).toEqual([52, 35])
  const lowest = Math.max(...[...svg.querySelectorAll('text')].map((text) => Number(text.getAttribute('y'))))
  expect(lowest).toBeLessThan(drawing.height)
})

test('two drawings stand beside each other under their words, and every name in the file is there once', () => {
  const part = (width: number, height: number): Drawing => ({
    width,
    height,
    markup:
      '<clipPath id="edge"><rect width="9" height="9"/></clipPath><g clip-path="url(#edge)"><rect width="99" height="9"/></g>',
  })
  const drawing = sideBySide([
    { caption: 'Tacks step down', drawing: part(300, 200) },
    { caption: '', drawing: part(300, 260) },
  ])
  // Below each other: twice 26 px of words, 200 and 260 px, and 24 px between them.
  const below = sideBySide(
    [
      { caption: 'a', drawing: part(300, 200) },
      { caption: '', drawing: part(320, 260) },
    ],
    'below',
  )
  expect([below.width, below.height]).toEqual([320, 536])
  const svg = fileOf(drawing)
  // 24 px between them; one line of 18 px and 8 px above them.
  expect([drawing.width, drawing.height]).toEqual([624, 286])
  expect(wordsIn(svg)).toEqual(['Tacks step down'])
  const ids = [...svg.querySelectorAll('[id]')].map(({ id }) => id)
  expect(new Set(ids).size).toBe(ids.length)
  for (const clipped of svg.querySelectorAll('[clip-path]')) {
    const id = /#(.+)\)/.exec(clipped.getAttribute('clip-path') ?? '')?.[1] ?? ''
    expect(clipped.parentElement?.querySelector(`[id="${id}"]`)).not.toBeNull()
  }
})

test('a face is cut round and has its words below it', () => {
  const svg = fileOf(roundPicture('data:image/png;base64,AAAA', 'the job'))
  expect(wordsIn(svg)).toEqual(['the job'])
  expect(svg.querySelector('image')?.getAttribute('clip-path')).toBe('url(#round)')
  expect(fileOf(roundPicture('data:image/png;base64,AAAA', '')).getAttribute('viewBox')).toBe('0 0 480 480')
})
