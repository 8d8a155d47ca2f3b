/** A lesson in a language without a glossary brings its own, and is held to it just as strictly. */
import { expect, test } from 'vitest'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import { glossaryFor, glossaryIn } from '../../src/lesson/language.ts'
import { changed, placeIn } from './sound-lesson.ts'

const italian = changed('language: en', 'language: it')
  .replace('assumes: [overprint, ink-film]\n', '')
  .replace(
    'objectives:',
    'glossary:\n  - { id: tack, term: tiro, forms: [tiri], sentence: Quanto un inchiostro resiste. }\nobjectives:',
  )
  .replace('**tack**', '**tiro**')

test('own terms are explained and used like any other', () => {
  expect(checkLesson(italian, { everyday: [] }).problems).toEqual([])
})

test('own terms are not used before they are explained', () => {
  const text = italian.replace('How strongly', 'I tiri: how strongly')
  expect(checkLesson(text, { everyday: [] }).problems).toEqual([
    {
      ...placeIn(text, 'tiri: how'),
      message: expect.stringMatching(/"tiri" \(tack\) is used before/) as string,
      said: { message: 'checker.usedTooEarly', values: { word: 'tiri', id: 'tack' } },
    },
  ])
})

test('without a glossary the terms are unknown', () => {
  const text = changed('language: en', 'language: it')
  const { problems } = checkLesson(text, { everyday: [] })
  const expected = ['overprint', 'ink-film', 'tack', 'tack'].map((term) => `${term} is no term of the glossary`)
  expect(problems.map(({ message }) => message)).toEqual(expected)
})

test('a regional language uses the glossary of its language', () => {
  expect(glossaryIn('en-GB')).toBe(glossaryIn('en'))
  expect(Object.keys(glossaryIn('constructor'))).toEqual([])
})

test('own terms stand beside those of the program', () => {
  const own = { id: 'tester', term: 'tester', sentence: 'One who tries.' }
  const glossary = glossaryFor({ language: 'en', glossary: [own, { rubbish: true }] })
  expect(glossary['tester']).toMatchObject({ term: 'tester', forms: [] })
  expect(glossary['tack']).toBe(glossaryIn('en')['tack'])
})
