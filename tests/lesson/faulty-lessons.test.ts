/** Every kind of fault in a lesson file gives its own message at its own place. */
import { describe, expect, test } from 'vitest'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import { faults } from './faults.ts'
import { changed, everyday, placeIn, soundLesson } from './sound-lesson.ts'

test('the lesson these faults are put into is sound', () => {
  expect(checkLesson(soundLesson, { everyday }).problems).toEqual([])
})

describe('a faulty lesson names its fault and its place', () => {
  test.each(faults)('$name', ({ from, to, at, message }) => {
    const text = changed(from, to)
    const { problems } = checkLesson(text, { everyday })
    expect(problems.map((problem) => problem.message).join('\n')).toMatch(message)
    const found = problems.find((problem) => message.test(problem.message))
    expect(found && { line: found.line, col: found.col }).toEqual(placeIn(text, at))
  })
})
