import { IntlMessageFormat } from 'intl-messageformat'
import { expect, test } from 'vitest'
import { glossary } from '../../src/words/en/glossary.ts'
import { en } from '../../src/words/en.ts'

const messages = Object.entries<string>(en)

test('every message can be formatted', () => {
  for (const [key, message] of messages) expect(() => new IntlMessageFormat(message, 'en'), key).not.toThrow()
})

test('every word linked to the glossary is explained there', () => {
  const unexplained = messages.flatMap(([key, message]) =>
    Array.from(message.matchAll(/\[\[([^|\]]+)\|/g), ([, term]) => term)
      .filter((term) => !Object.hasOwn(glossary, term))
      .map((term) => `${key}: ${term}`),
  )
  expect(unexplained).toEqual([])
})
