/** What is no YAML is told in sentences of our own, whatever the parser calls it; each text is one an author might write. */
import { expect, test } from 'vitest'
import { parseDocument } from 'yaml'
import { readSource } from '../../src/lesson/source.ts'
import { yamlProblem } from '../../src/lesson/yaml-problem.ts'
import { inEnglish } from '../../src/press/problem.ts'

const first = 'is not YAML as a lesson is written: '

test.each([
  ['a:\n\tb: 1\n', 'a tab does not indent; allowed are blanks'],
  ['a:\n   b: 1\n  c: 2\n', 'this does not begin under its neighbours'],
  ['a: [1, 2\nb: 3\n', 'a bracket does not end, or ends too far to the left; each [ needs its ], each { its }'],
  ['a: { b: 1\nc: 2\n', 'a bracket does not end'],
  ['[1, 2', 'a bracket does not end'],
  ['a: "text\nb: 1\n', 'a text in quotes does not end'],
  ["a: 'text\nb: 1\n", 'a text in quotes does not end'],
  ['a: ["x" "y"]\n', 'between two things in brackets there is no comma, or one too many'],
  ['a: [1,, 2]\n', 'between two things in brackets there is no comma, or one too many'],
  ['id: x\ntitle\n', 'this is neither a field nor an item'],
  ['title\nid: x\n', 'this is neither a field nor an item'],
  ['a:1\nb: 2\n', 'this is neither a field nor an item'],
  ['a:\n  - b: 1\n   c: 2\n', 'this is neither a field nor an item'],
  ['a: Read this: now\n', 'a text with a colon and a blank in it needs quotes'],
  ['a: "b"#c\n', 'a note after # needs a blank before it'],
  ['a: @b\n', 'a text that begins with this sign needs quotes'],
  ['a: % of ink\n', 'a text that begins with this sign needs quotes'],
  ['% of ink\na: 1\n', 'a text that begins with this sign needs quotes'],
  ['a: & b\n', 'a text that begins with this sign needs quotes'],
  ['a: "C:\\dir"\n', 'within double quotes this sign is none after \\; use single quotes, or \\\\ for the sign itself'],
  ['a: | text\n  b\n', 'after | and > nothing else stands on the line'],
  ['a: "He said "no" twice"\n', 'this does not belong here'],
  ['a: ]\n', 'this does not belong here'],
])('%j', (text, sentence) => {
  expect(readSource(text).problems.map(({ message }) => message)[0]).toContain(first + sentence)
})

test('what the parser may say besides is quoted, its first line and not too much of it', () => {
  const [error] = parseDocument('a: [', { prettyErrors: false }).errors
  Object.assign(error, { code: 'IMPOSSIBLE', message: `${'Map comment '.repeat(30)}\nat line 1` })
  const sentence = inEnglish(yamlProblem(error))
  expect(sentence).toMatch(/^is not YAML as a lesson is written: Map comment .*\.\.\.$/)
  expect(sentence.length).toBeLessThan(220)
})
