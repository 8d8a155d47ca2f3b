/** What the checker of lessons finds, on a Spanish page. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { checkLesson } from '../../src/lesson/check-lesson.ts'
import { chooseLanguage } from '../../src/ui/language.ts'
import { checkerLine } from '../../src/ui/lessons/checker-line.ts'
import { saySaid } from '../../src/ui/problem-words.ts'
import { faults } from '../lesson/faults.ts'
import { changed, everyday } from '../lesson/sound-lesson.ts'

beforeAll(() => chooseLanguage('es'))
afterAll(() => chooseLanguage('en'))

const found = (text: string) => checkLesson(text, { everyday }).problems

test.each(faults)('$name is told in Spanish', ({ from, to, message }) => {
  const problem = found(changed(from, to)).find((each) => message.test(each.message))
  expect(problem).toBeDefined()
  if (!problem) return
  const sentence = saySaid(problem.said)
  expect(sentence).not.toBe(problem.message)
  expect(sentence).not.toMatch(/\b(is|are|the|allowed|needs|has|does|not|this|reads)\b/)
})

test.each([
  ['minutes: 5', 'minutes: 0.5', 'Línea 5, columna 10: 0,5 no vale como número de minutos; valen números de 1 a 120'],
  [
    'show: [tack,',
    'show: [tacks,',
    /^Línea 19, columna 8: "tacks" no vale como control; valen order, tack, .*; ¿querías decir tack\?$/,
  ],
  [
    '{ name: cyan, tack: 13 }',
    '{ name: cyan, tack: 130 }',
    'Línea 16, columna 27: inks[0].tack 130 no vale aquí; valen números de 2 a 40 unidades de tiro',
  ],
  ['id: look', 'id: first', /: look no es ningún paso; valen what, guess, lower, number, first, why$/],
  [
    'enter: 0.86',
    'enter: 0.5',
    /la solución no llega a esto: film de magenta en el parche de cyan, magenta da 0,8\d um$/,
  ],
  ['minutes: 5', 'minutes: 5\n\tb: 1', /no es YAML tal como se escribe una lección: un tabulador no sirve de sangría/],
])('%s made %s', (from, to, line) => {
  const lines = found(changed(from, to)).map(checkerLine)
  expect(lines).toContainEqual(typeof line === 'string' ? line : (expect.stringMatching(line) as string))
})
