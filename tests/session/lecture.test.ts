import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lectureOf } from '../../src/session/lecture.ts'
import { mostScenes } from '../../src/session/scene.ts'
import { benchForScene } from '../../src/session/scene-session.ts'
import { Session } from '../../src/session/session.ts'

function lectureOfThree() {
  const session = new Session()
  const lecture = lectureOf(session)
  for (const name of ['one', 'two', 'three']) lecture.add({ name, note: '', ...benchForScene(session) })
  const names = () => lecture.scenes.map(({ name }) => name)
  return { session, lecture, names }
}

describe('the scenes of a lecture', () => {
  it('hold what was on the bench when they were taken, but not which part of the page was open', () => {
    const session = new Session()
    session.lookWith({ view: 'lecture', face: 'marks', leftOut: ['cyan'] })
    session.play({ kind: 'look at unit', unit: 2 })
    const { setUp } = session
    const scene = benchForScene(session)
    session.change({ kind: 'take scenario', scenario: 'reversed' })
    expect(scene).toEqual({ setUp, view: { patch: [0, 2, 3], unit: 2, face: 'marks' } })
  })

  it('are moved, copied and taken out, and all of it is taken back step by step', () => {
    const { lecture, names } = lectureOfThree()
    lecture.move(2, 0)
    expect(names()).toEqual(['three', 'one', 'two'])
    lecture.duplicate(1)
    expect(names()).toEqual(['three', 'one', 'one', 'two'])
    lecture.remove(0)
    expect(names()).toEqual(['one', 'one', 'two'])
    lecture.undo()
    lecture.undo()
    expect(names()).toEqual(['three', 'one', 'two'])
    lecture.undo()
    expect(names()).toEqual(['one', 'two', 'three'])
    lecture.redo()
    expect(names()).toEqual(['three', 'one', 'two'])
  })

  it('take a sentence that is typed letter by letter back as one, and two fields as two', () => {
    const { lecture } = lectureOfThree()
    for (const name of ['o', 'on', 'once']) lecture.edit(0, { name })
    for (const note of ['s', 'slowly']) lecture.edit(0, { note })
    expect(lecture.scenes[0]).toMatchObject({ name: 'once', note: 'slowly' })
    lecture.undo()
    expect(lecture.scenes[0]).toMatchObject({ name: 'once', note: '' })
    lecture.undo()
    expect(lecture.scenes[0]).toMatchObject({ name: 'one', note: '' })
  })

  it('lose a field that is set to nothing', () => {
    const { lecture } = lectureOfThree()
    lecture.edit(1, { number: { of: 'picked' }, waits: true })
    lecture.edit(1, { number: undefined })
    expect(lecture.scenes[1]).toHaveProperty('waits', true)
    expect(lecture.scenes[1]).not.toHaveProperty('number')
  })

  it('stay as they are when a place does not exist, and tell nothing', () => {
    const { lecture, names } = lectureOfThree()
    let told = 0
    lecture.subscribe(() => told++)
    lecture.move(0, 3)
    lecture.move(1, 1)
    lecture.remove(7)
    lecture.edit(-1, { name: 'none' })
    expect(lecture.duplicate(3)).toBe(false)
    lecture.redo()
    expect(told).toBe(0)
    expect(names()).toEqual(['one', 'two', 'three'])
  })

  it('are no more than fit', () => {
    const { session, lecture } = lectureOfThree()
    const scene = { name: 'again', note: '', ...benchForScene(session) }
    lecture.take(Array.from({ length: mostScenes + 5 }, () => scene))
    expect(lecture.scenes).toHaveLength(mostScenes)
    expect(lecture.add(scene)).toBe(false)
    expect(lecture.scenes).toHaveLength(mostScenes)
  })

  it('come back whole by undo after whatever was done', () => {
    const doing = fc.oneof(
      fc.record({ kind: fc.constant('move' as const), from: fc.nat(4), to: fc.nat(4) }),
      fc.record({ kind: fc.constantFrom('duplicate' as const, 'remove' as const), at: fc.nat(4) }),
    )
    fc.assert(
      fc.property(fc.array(doing, { maxLength: 20 }), (doings) => {
        const { lecture, names } = lectureOfThree()
        for (const each of doings) {
          if (each.kind === 'move') lecture.move(each.from, each.to)
          else lecture[each.kind](each.at)
        }
        const after = names()
        // Three undos more would also take out the three scenes themselves.
        while (lecture.canUndo) lecture.undo()
        expect(names()).toEqual([])
        while (lecture.canRedo) lecture.redo()
        expect(names()).toEqual(after)
      }),
    )
  })
})
