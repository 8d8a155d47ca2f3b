import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { drawInLaterTurn, isTurnFull, showWhole } from '../../src/ui/turns.ts'
import { nextTurn } from '../../src/view/next-turn.ts'

/** ms of a clock that only what is drawn moves on. */
let now = 0

beforeEach(() => {
  vi.spyOn(performance, 'now').mockImplementation(() => now)
})
afterEach(async () => {
  await nextTurn()
  await nextTurn()
  vi.restoreAllMocks()
})

/** Draws as an element of the page does: at once where there is room. */
async function draw(drawn: string[], name: string, ms: number): Promise<void> {
  const paint = () => {
    now += ms
    drawn.push(name)
  }
  if (isTurnFull()) await drawInLaterTurn(paint)
  else paint()
}

async function newTurn(): Promise<void> {
  isTurnFull()
  await nextTurn()
  await nextTurn()
}

test('what is quickly drawn is drawn at once', async () => {
  await newTurn()
  const drawn: string[] = []
  for (const name of ['ladder', 'paper', 'press']) void draw(drawn, name, 2)
  expect(drawn).toEqual(['ladder', 'paper', 'press'])
})

test('slow parts get a turn each, in the order in which they came', async () => {
  await newTurn()
  const drawn: string[] = []
  const turns: string[][] = []
  const all = ['ladder', 'paper', 'press'].map((name) => draw(drawn, name, 40))
  turns.push([...drawn])
  while (drawn.length < 3 && turns.length < 10) {
    await nextTurn()
    // What was let in draws before the turn after.
    await Promise.resolve()
    turns.push([...drawn])
  }
  await Promise.all(all)
  expect(turns.filter((each, i) => each.length !== turns[i - 1]?.length)).toEqual([
    ['ladder'],
    ['ladder', 'paper'],
    ['ladder', 'paper', 'press'],
  ])
})

test('quick parts that wait share a turn', async () => {
  await newTurn()
  const drawn: string[] = []
  void draw(drawn, 'slow', 40)
  const waiting = ['paper', 'press', 'line'].map((name) => draw(drawn, name, 2))
  expect(drawn).toEqual(['slow'])
  await waiting[0]
  await Promise.all(waiting)
  expect(drawn).toEqual(['slow', 'paper', 'press', 'line'])
})

test('who comes while others wait, waits behind them', async () => {
  await newTurn()
  const drawn: string[] = []
  void draw(drawn, 'slow', 40)
  const first = draw(drawn, 'paper', 40)
  const second = draw(drawn, 'press', 1)
  await first
  expect(drawn).toEqual(['slow', 'paper'])
  await second
  expect(drawn).toEqual(['slow', 'paper', 'press'])
})

test('a part that fails is told of, and does not hold up the rest', async () => {
  await newTurn()
  const drawn: string[] = []
  void draw(drawn, 'slow', 40)
  const failing = drawInLaterTurn(() => {
    throw new Error('It cannot be drawn.')
  })
  const next = draw(drawn, 'press', 1)
  await expect(failing).rejects.toThrow('It cannot be drawn.')
  await next
  expect(drawn).toEqual(['slow', 'press'])
})

test('what comes in is not seen before its last part is drawn', async () => {
  await newTurn()
  const drawn: string[] = []
  const seen: string[] = []
  const style = { opacity: '' }
  const whole = showWhole({ style } as HTMLElement)
  void draw(drawn, 'slow', 40)
  for (const name of ['paper', 'press', 'line'])
    void draw(drawn, name, 40).then(() => seen.push(`${name}: ${style.opacity}`))
  await whole
  expect(drawn).toEqual(['slow', 'paper', 'press', 'line'])
  expect(seen).toEqual(['paper: 0', 'press: 0', 'line: 0'])
  expect(style.opacity).toBe('')
})
