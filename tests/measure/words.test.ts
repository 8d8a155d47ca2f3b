import { readdirSync, readFileSync } from 'node:fs'
import { IntlMessageFormat } from 'intl-messageformat'
import { describe, expect, it } from 'vitest'
import { glossary } from '../../src/words/en/glossary.ts'
import { measure } from '../../src/words/en/measure.ts'

const source = readdirSync('src/measure')
  .map((file) => readFileSync(`src/measure/${file}`, 'utf8'))
  .join('\n')

describe.each(Object.entries(measure))('%s', (key, message) => {
  it('is a message that can be filled in', () => {
    expect(() => new IntlMessageFormat(message, 'en')).not.toThrow()
  })

  it('links only to terms of the glossary', () => {
    for (const [, term] of message.matchAll(/\[\[([^\]|]*)/g)) expect(Object.keys(glossary)).toContain(term)
  })

  it('is said by the measurements', () => {
    // The last part of some is put in by a value: the name of an equation, the kind of a parameter.
    const stem = key.replace(/\.[^.]*$/, '.${')
    expect(source.includes(`'${key}'`) || source.includes(`\`${stem}`)).toBe(true)
  })
})
