/** What is handed to the board: result files and exports of statements (JSON and CSV), spoilt; read and counted. */
import fc from 'fast-check'
import Papa from 'papaparse'
import { countCauses } from '../../src/class/count-drills.ts'
import { countLearners } from '../../src/class/count-learners.ts'
import { countLesson, countSteps } from '../../src/class/count-lessons.ts'
import { readHanded } from '../../src/class/read-handed.ts'
import { Roll } from '../../src/class/roll.ts'
import { writeResult } from '../../src/session/make-result.ts'
import { extensionIds } from '../../src/session/statement-extensions.ts'
import { say } from '../../src/ui/say.ts'
import { courseLessons } from '../class/course-lessons.ts'
import { classMember } from '../class/made-class.ts'
import { finite, spoken } from './hold.ts'
import { anyText, spoiltText, textEdits } from './spoil-text.ts'
import { spoiltTree, treeEdits } from './spoil-tree.ts'
import { subject } from './subject.ts'

/** Takes the text in beside a sound result, counts all there is, and holds it to be numbers. */
async function counted(text: string): Promise<void> {
  const read = await readHanded(text)
  if ('refused' in read) {
    spoken(say(read.refused.message, read.refused.values), text)
    return
  }
  const roll = new Roll()
  for (const result of read.results) roll.add(result, 'handed')
  for (const result of read.results) roll.add(result, 'handed again')
  const { learners, lessons } = roll
  finite(countCauses(learners))
  finite(countLearners(learners, [...lessons.keys()]))
  for (const [key, entry] of lessons) {
    finite(countLesson(key, entry, learners))
    finite(countSteps(key, entry, learners))
  }
}

const lessons = courseLessons().slice(0, 3)
const members = Array.from({ length: 12 }, (_, n) => JSON.parse(writeResult(classMember(n, lessons))) as unknown)
const member = fc.constantFrom(...members)

const anyResult = fc.oneof(
  { weight: 5, arbitrary: fc.tuple(member, treeEdits).map(([result, edits]) => spoiltTree(result, edits)) },
  {
    weight: 2,
    arbitrary: fc.tuple(member, textEdits).map(([result, edits]) => spoiltText(JSON.stringify(result), edits)),
  },
  { weight: 1, arbitrary: anyText },
)

export const resultFiles = subject('result files', 3000, anyResult, counted)

const statement = fc.record({
  timestamp: fc.constantFrom(
    '2026-03-02T08:04:00.000Z',
    '2026-03-02T08:04:00+01:00',
    '+275760-09-13T00:00:00.000Z',
    'now',
  ),
  actor: fc.record(
    {
      name: fc.constantFrom('Ada', '=1+1', ''),
      mbox: fc.constant('mailto:ada@school.example'),
      account: fc.constant({ name: 'ada', homePage: 'https://school.example' }),
    },
    { requiredKeys: ['name'] },
  ),
  verb: fc
    .constantFrom('answered', 'completed', 'terminated')
    .map((verb) => ({ id: `http://adlnet.gov/expapi/verbs/${verb}` })),
  object: fc.record({
    id: fc
      .constantFrom(
        'tack--read',
        'tack--guess',
        'tack',
        'drill--easy-3',
        'drill-1',
        '__proto__--x',
        'constructor',
        '--',
        '',
      )
      .map((id) => `https://school.example/course/${id}`),
    definition: fc.record({
      interactionType: fc.constantFrom('choice', 'numeric', 'sequencing', 'fill-in', ''),
      correctResponsesPattern: fc.array(fc.constantFrom('40[:]42', 'worse', 'a[,]b', 'cause-x', '1e999[:]2', ''), {
        maxLength: 2,
      }),
    }),
  }),
  result: fc.record(
    {
      response: fc.constantFrom('41', 'worse', 'cause-unit-too-warm-2[,]seen-x', 'a[,]b', '1e999', ''),
      success: fc.boolean(),
      duration: fc.oneof(
        fc.constantFrom('PT1M30S', 'PT0S', 'P1D', '-PT5S', ''),
        fc.nat(400).map((digits) => `PT${'9'.repeat(digits)}S`),
      ),
      score: fc.record({ scaled: fc.constantFrom(0, 0.5, 1, 2, -1) }),
      extensions: fc.dictionary(
        fc.constantFrom(...Object.values(extensionIds)),
        fc.constantFrom<unknown>(
          'proven',
          3,
          -1,
          1e300,
          null,
          ['thermometer 2'],
          [{ evidence: 'eye', readings: 1 }],
          [{ id: '__proto__', kind: 'say', done: true, misses: 0, hints: 1 }],
          { answer: { form: 'reading', entered: 1e300, tolerance: 0, unit: 'constructor' }, mistakes: [11] },
        ),
      ),
    },
    { requiredKeys: [] },
  ),
})
const statements = fc.array(statement, { minLength: 1, maxLength: 12 })

/** One row a statement, its columns named by the path of each value. */
function asTable(list: readonly object[]): string {
  const flat = (value: unknown, path: string): [string, string][] =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.entries(value).flatMap(([key, each]) => flat(each, path === '' ? key : `${path}.${key}`))
      : [[path, typeof value === 'string' ? value : JSON.stringify(value)]]
  const rows = list.map((each) => Object.fromEntries(flat(each, '')))
  return Papa.unparse({ fields: [...new Set(rows.flatMap(Object.keys))], data: rows })
}

const anyExport = fc.oneof(
  { weight: 1, arbitrary: statements.map((list) => JSON.stringify(list)) },
  { weight: 1, arbitrary: statements.map(asTable) },
  { weight: 3, arbitrary: fc.tuple(statements, treeEdits).map(([list, edits]) => spoiltTree(list, edits)) },
  {
    weight: 3,
    arbitrary: fc
      .tuple(statements, treeEdits)
      .map(([list, edits]) => spoiltTree({ statements: list, more: '' }, edits)),
  },
  {
    weight: 4,
    arbitrary: fc.tuple(statements.map(asTable), textEdits).map(([table, edits]) => spoiltText(table, edits)),
  },
  { weight: 1, arbitrary: anyText.map((text) => `verb.id,timestamp,object.id\n${text}`) },
)

export const statementExports = subject('statements', 1500, anyExport, counted)
