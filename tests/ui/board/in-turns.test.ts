/** Sections of a large class: one count a drawing, until all are made. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { InTurns } from '../../../src/ui/board/in-turns.ts'

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

/** A view of three sections; what each drawing shows, and how many counts it made. */
function viewOf() {
  const drawings: { shown: (string | null)[]; made: number }[] = []
  let of: string[] = []
  const draw = () => {
    turns.begin()
    let made = 0
    const shown = sections.map((section, at) =>
      section.show(of, () => {
        made++
        return `${at} of ${of.join()}`
      }),
    )
    drawings.push({ shown, made })
  }
  const turns = new InTurns(draw)
  const sections = [turns.section<string>(), turns.section<string>(), turns.section<string>()]
  const show = (...now: string[]) => {
    of = now
    draw()
    vi.runAllTimers()
    return drawings.splice(0)
  }
  return { show, draw, sections, drawings }
}

test('each drawing makes one count, and the next ones follow by themselves until all are there', () => {
  const { show } = viewOf()
  expect(show('day class')).toEqual([
    { shown: ['0 of day class', null, null], made: 1 },
    { shown: ['0 of day class', '1 of day class', null], made: 1 },
    { shown: ['0 of day class', '1 of day class', '2 of day class'], made: 1 },
  ])
})

test('what a section showed before stands until its turn, and nothing is counted twice', () => {
  const { show, draw, drawings } = viewOf()
  show('day class')
  const [first, , last] = show('evening class')
  expect(first.shown).toEqual(['0 of evening class', '1 of day class', '2 of day class'])
  expect(last.shown).toEqual(['0 of evening class', '1 of evening class', '2 of evening class'])
  draw()
  vi.runAllTimers()
  expect(drawings.map(({ made }) => made)).toEqual([0])
})

test('a section that is cleared has nothing of the class that was put away', () => {
  const { show, sections } = viewOf()
  show('day class')
  for (const section of sections) section.clear()
  expect(show('day class')[0].shown).toEqual(['0 of day class', null, null])
})
