/** The fuzz with fixed seeds; `npm run fuzz` tries more of the same, measures its memory and replays what fails. */
import { expect, test } from 'vitest'
import { subjects } from './subjects.ts'

let ran = 0

test.each(subjects.map((subject, index) => ({ subject, seed: 900 + index, name: subject.name })))(
  '$name: nothing throws, stalls, speaks on the console or reaches a prototype, and what is taken is legal',
  async ({ subject, seed }) => {
    const { cases, failure } = await subject.tryCases({ cases: subject.cases, seed })
    expect(failure).toBeNull()
    expect(cases).toBe(subject.cases)
    ran += cases
  },
  120_000,
)

test('at least 20,000 cases really ran', () => {
  expect(ran).toBeGreaterThanOrEqual(20_000)
})
