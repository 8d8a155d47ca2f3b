import { expect, test } from 'vitest'
import { InSteps, allAtOnce } from '../../src/colour/in-steps.ts'

/** A sum whose terms are told of as they are added. */
function* sum(terms: readonly number[], added: number[] = []): Generator<undefined, { sum: number }> {
  let sum = 0
  for (const term of terms) {
    sum += term
    added.push(term)
    yield
  }
  return { sum }
}

test('takes as many steps as it may, one at least, and goes on where it stopped', () => {
  const added: number[] = []
  const steps = new InSteps(sum([1, 2, 3, 4], added))
  expect(steps.makeWhile(() => false)).toBeUndefined()
  expect(added).toEqual([1])
  let left = 2
  expect(steps.makeWhile(() => --left > 0)).toBeUndefined()
  expect(added).toEqual([1, 2, 3])
  expect(steps.makeWhile(() => true)).toEqual({ sum: 10 })
})

test('what is made is kept, and the same whether in steps or all at once', () => {
  const added: number[] = []
  const steps = new InSteps(sum([1, 2, 3], added))
  steps.makeWhile(() => false)
  const made = steps.make()
  expect(made).toEqual(allAtOnce(sum([1, 2, 3])))
  expect(steps.make()).toBe(made)
  expect(steps.makeWhile(() => false)).toBe(made)
  expect(added).toEqual([1, 2, 3])
})

test('a step that fails is told of, and trying again does not hang', () => {
  function* failing(): Generator<undefined, object> {
    yield
    throw new Error('no film')
  }
  const steps = new InSteps(failing())
  expect(() => steps.makeWhile(() => true)).toThrow('no film')
  expect(steps.makeWhile(() => true)).toBeUndefined()
})
