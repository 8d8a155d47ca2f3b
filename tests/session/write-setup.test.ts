import fc from 'fast-check'
import { expect, test } from 'vitest'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { intervalAt } from '../../src/press/presets.ts'
import { writeSetUp } from '../../src/session/write-setup.ts'
import { anySetUp } from '../press/legal-setups.ts'

test('any legal set-up comes back from its written form field by field, through JSON text', () => {
  fc.assert(
    fc.property(anySetUp(2, 8), fc.boolean(), (drawn, pinned) => {
      const { kind, speed, interval } = drawn.press
      const press = { ...drawn.press, intervalPinned: pinned, interval: pinned ? interval : intervalAt(kind, speed) }
      const setUp = { ...drawn, press }
      expect(checkSetUp(JSON.parse(JSON.stringify(writeSetUp(setUp))))).toEqual({ setUp })
    }),
    { numRuns: 300 },
  )
})

test('a paper with a name of its own keeps its name and every number', () => {
  const given = {
    inks: [
      { name: 'a', tack: 12 },
      { name: 'b', tack: 10 },
    ],
    paper: { base: 'newsprint', name: 'market bulletin', surfaceStrength: 40, absorbency: 2 },
  }
  const checked = checkSetUp(given)
  if ('problems' in checked) throw new Error(checked.problems[0].message)
  const written = writeSetUp(checked.setUp)
  expect(written.paper).toEqual(given.paper)
  expect(checkSetUp(written)).toEqual(checked)
})

test('an interval that follows the speed is left out, so that it goes on following', () => {
  const checked = checkSetUp({
    inks: [
      { name: 'a', tack: 12 },
      { name: 'b', tack: 10 },
    ],
    press: { kind: 'web', speed: 5 },
  })
  if ('problems' in checked) throw new Error(checked.problems[0].message)
  expect(writeSetUp(checked.setUp).press).not.toHaveProperty('interval')
})
