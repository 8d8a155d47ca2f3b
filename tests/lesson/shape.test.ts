/** A lesson asks for more than reading on. */
import { expect, test } from 'vitest'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import type { Lesson } from '../../src/lesson/lesson.ts'
import { checkShape } from '../../src/lesson/shape.ts'
import { inEnglish } from '../../src/press/problem.ts'
import { everyday, soundLesson } from './sound-lesson.ts'

const { lesson } = checkLesson(soundLesson, { everyday })
if (!lesson) throw new Error('the sound lesson is not sound')
const sound: Lesson = lesson

function messages(steps: Lesson['steps']): string[] {
  return checkShape({ ...sound, steps }).map(({ said }) => inEnglish(said))
}

test('the sound lesson has what it needs', () => {
  expect(messages(sound.steps)).toEqual([])
})

test.each([
  ['too few steps', (steps: Lesson['steps']) => steps.slice(0, 5), /has 5 steps; a lesson needs at least 6/],
  [
    'no prediction',
    (steps: Lesson['steps']) => steps.map((step) => (step.kind === 'predict' ? steps[0] : step)),
    /has no predict step/,
  ],
  [
    'too few kinds',
    (steps: Lesson['steps']) => steps.map((step) => (step.kind === 'say' || step.kind === 'predict' ? steps[2] : step)),
    /has steps of 2 kinds/,
  ],
  [
    'nothing measured',
    (steps: Lesson['steps']) => steps.map((step) => ('expect' in step && step.id !== 'look' ? steps[4] : step)),
    /measures nothing/,
  ],
  [
    'too few foreseen errors',
    (steps: Lesson['steps']) => steps.map((step) => (step.id === 'lower' ? { ...step, feedback: [] } : step)),
    /has feedback for 1 foreseen error; a lesson needs at least 2/,
  ],
] as const)('%s', (_, change, message) => {
  expect(messages(change(sound.steps)).join('\n')).toMatch(message)
})

test('steps of reading alone make no lesson', () => {
  const reading = Array.from({ length: 8 }, () => sound.steps[0])
  expect(messages(reading)).toHaveLength(4)
})
