import { expect, test, vi } from 'vitest'
import type { DrillTask } from '../../src/drill/drill-service.ts'
import { answerDrillTask } from '../../src/drill/drill-service.ts'
import { kindDrawn } from '../../src/drill/drill.ts'
import { enoughEvidence } from '../../src/drill/judge.ts'
import { DrillDesk } from '../../src/session/drill-desk.ts'

/** ms: on a machine that may be busy with other things */
vi.setConfig({ testTimeout: 120_000 })

const ask = (task: DrillTask) => Promise.resolve(answerDrillTask(structuredClone(task)))

test('a drill is named, cured and written down once, whatever the number of answers', async () => {
  const desk = new DrillDesk(null, ask)
  await desk.open({ seed: 3, level: 'easy' })
  const { drill } = desk.state
  if (!drill) throw new Error('The drill was not made.')
  const wrong = drill.offered.find((cause) => cause.kind !== drill.faults[0].kind)
  if (!wrong) throw new Error('This drill offers no cause of another kind.')
  await desk.name([wrong], [{ kind: 'eye', unit: null }])
  expect(desk.state.verdict?.found).toBe(false)
  const enough = enoughEvidence(drill)
  for (const piece of enough) desk.take(piece)
  await desk.name([drill.faults[0]], enough)
  expect(desk.state.verdict?.proven).toBe(true)
  await desk.cure({ kind: 'put right', cause: drill.faults[0] })
  expect(desk.state.verdict?.cured).toBe(true)
  expect(desk.state.record).toMatchObject([{ drill: 'easy-3', first: 'missed', tries: 2, cured: true }])
  expect(desk.state.record[0].way?.cures).toHaveLength(1)
  await desk.takeBackCure()
  expect(desk.state.verdict?.cure).toBeNull()
  expect(desk.state.record[0].way?.cures).toEqual([])
  expect(desk.state.keeps).toBe(false)
})

test('a drill that is called off for another never arrives', async () => {
  const desk = new DrillDesk(null, ask)
  const first = desk.open({ seed: 3, level: 'easy' })
  await desk.open({ seed: 4, level: 'easy' })
  await first
  expect(desk.state.drill?.request.seed).toBe(4)
})

test('the next drill is of another kind than the last, and the kind is the one its seed draws', async () => {
  const desk = new DrillDesk(null, ask)
  await desk.next()
  const { drill } = desk.state
  if (!drill) throw new Error('The drill was not made.')
  expect(drill.faults[0].kind).toBe(kindDrawn(drill.request))
  await desk.name([drill.faults[0]], [{ kind: 'eye', unit: null }])
  await desk.next()
  expect(desk.state.drill?.faults[0].kind).not.toBe(drill.faults[0].kind)
})

test('a drill is there again where it was left: what was measured, named and cured', async () => {
  const held = new Map<string, string>()
  const storage = {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, text: string) => void held.set(key, text),
  }
  const before = new DrillDesk(storage, ask)
  await before.open({ seed: 3, level: 'easy' })
  const { drill } = before.state
  if (!drill) throw new Error('The drill was not made.')
  const wrong = drill.offered.find((cause) => cause.kind !== drill.faults[0].kind)
  if (!wrong) throw new Error('This drill offers no cause of another kind.')
  before.take({ kind: 'loupe', unit: null }, 4)
  await before.name([wrong], [{ kind: 'loupe', unit: null }])
  await before.cure({ kind: 'put right', cause: wrong })
  await before.cure({ kind: 'remedy', remedy: 'slow down', unit: null })
  before.showAnswer()
  const { work, verdict, answerShown, record } = before.state

  const again = new DrillDesk(storage, ask)
  await again.takeUp()
  expect(again.state.drill?.request).toEqual({ seed: 3, level: 'easy' })
  expect(again.state).toMatchObject({ work, verdict, answerShown, record })
  expect(work.taken.find(({ evidence }) => evidence.kind === 'loupe')?.readings).toBe(4)

  const other = new DrillDesk(storage, ask)
  await other.open({ seed: 4, level: 'easy' })
  await again.open({ seed: 3, level: 'easy' }, true)
  expect(again.state).toMatchObject({ verdict: null, answerShown: false, work: { diagnosis: null, cures: [] } })
  await again.open({ seed: 4, level: 'easy' })
  await again.name([...(again.state.drill?.faults ?? [])], [{ kind: 'eye', unit: null }])
  for (const cause of again.state.drill?.faults ?? []) await again.cure({ kind: 'put right', cause })
  expect(again.state.verdict?.cured).toBe(true)
  const next = new DrillDesk(storage, ask)
  await next.takeUp()
  expect(next.state.request).toBeNull()
})

test.each([
  '',
  'no JSON',
  '{}',
  '[{"drill":"easy-3"}]',
  '[{"drill":"easy-3","taken":[{"evidence":"ghost","readings":1}]}]',
])('kept drills that make no sense are none: %s', async (text) => {
  const desk = new DrillDesk(
    { getItem: (key) => (key.endsWith('at work') ? text : null), setItem: () => undefined },
    ask,
  )
  await desk.takeUp()
  expect(desk.state.request).toBeNull()
})
