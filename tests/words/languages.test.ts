/** Every language says what the English one says: the same messages, with the same values, and each of them parses. */
import { IntlMessageFormat } from 'intl-messageformat'
import { describe, expect, test } from 'vitest'
import { en } from '../../src/words/en.ts'
import { glossary } from '../../src/words/en/glossary.ts'
import { es } from '../../src/words/es.ts'

const english: Readonly<Record<string, string>> = en
const languages: readonly (readonly [tag: string, words: Readonly<Record<string, string>>])[] = [['es', es]]

describe.each(languages)('%s', (tag, words) => {
  test('has exactly the messages that English has', () => {
    expect(Object.keys(words).sort()).toEqual(Object.keys(english).sort())
  })

  test('uses in each message the values that the English one uses, and no other', () => {
    for (const [key, message] of Object.entries(words)) {
      expect([...valuesIn(message, tag)].sort(), key).toEqual([...valuesIn(english[key], 'en')].sort())
    }
  })

  test('marks only terms that the glossary explains', () => {
    for (const [key, message] of Object.entries(words)) {
      for (const [, term] of message.matchAll(/\[\[([^|\]]*)\|/g)) expect(Object.keys(glossary), key).toContain(term)
    }
  })
})

test('a value that one branch alone uses is found', () => {
  expect(valuesIn('{n, plural, one {a {deep} word} other {{n} <b>{bold}</b>}}', 'en')).toEqual(
    new Set(['n', 'deep', 'b', 'bold']),
  )
})

/** Plain text between the values. */
function isLiteral({ type }: { type: number }): boolean {
  return type === 0
}

/** Names of the values a message is filled with, also inside plurals, choices and marks. */
function valuesIn(message: string, tag: string): Set<string> {
  const names = new Set<string>()
  const walk = (elements: ReturnType<IntlMessageFormat['getAst']>) => {
    for (const element of elements) {
      if ('value' in element && !isLiteral(element)) names.add(element.value)
      if ('options' in element) for (const { value } of Object.values(element.options)) walk(value)
      if ('children' in element) walk(element.children)
    }
  }
  walk(new IntlMessageFormat(message, tag).getAst())
  return names
}
