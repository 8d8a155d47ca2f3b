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
  await desk.takeBackCure()
  expect(desk.state.verdict?.cure).toBeNull()
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
