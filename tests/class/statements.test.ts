/** Statements from a record store, as the cmi5 adapter words them, counted like results. */
import { expect, test, vi } from 'vitest'
import { readHanded } from '../../src/class/read-handed.ts'
import { Roll } from '../../src/class/roll.ts'
import { countCauses } from '../../src/class/count-drills.ts'
import { otherStatements } from './other-statements.ts'

const verb = (name: string) => ({ id: `http://adlnet.gov/expapi/verbs/${name}` })
const ada = { name: 'Ada', account: { homePage: 'https://school.example', name: 'ada' } }
const base = 'https://school.example/course'

function answer(id: string, minute: number, type: string, right: string, response: string, success?: boolean) {
  return {
    timestamp: `2026-03-02T08:${String(minute).padStart(2, '0')}:00.000Z`,
    actor: ada,
    verb: verb('answered'),
    object: { id: `${base}/${id}`, definition: { interactionType: type, correctResponsesPattern: [right] } },
    result: { response, duration: 'PT1M30S', ...(success === undefined ? {} : { success }) },
  }
}

const statements = [
  answer('tack--read', 5, 'numeric', '40[:]42', '41', true),
  answer('tack--guess', 1, 'choice', 'worse', 'same'),
  answer('tack--read', 4, 'numeric', '40[:]42', '75', false),
  {
    timestamp: '2026-03-02T08:06:00.000Z',
    actor: ada,
    verb: verb('completed'),
    object: { id: `${base}/tack` },
    result: { completion: true, score: { scaled: 0.5 } },
  },
  // the whole package, which has no score, and a verb of no concern
  {
    timestamp: '2026-03-02T08:07:00.000Z',
    actor: ada,
    verb: verb('completed'),
    object: { id: base },
    result: { completion: true },
  },
  { timestamp: '2026-03-02T08:08:00.000Z', actor: ada, verb: verb('terminated'), object: { id: base } },
  answer('drill--easy-3', 9, 'choice', 'unit-too-warm-2', 'tack-too-low-2', false),
]

async function rollOf(text: string): Promise<Roll> {
  const read = await readHanded(text)
  if ('refused' in read) throw new Error(read.refused.message)
  const roll = new Roll()
  for (const result of read.results) roll.add(result, 'export')
  return roll
}

test.each([
  ['a list', JSON.stringify(statements)],
  ['the answer of a store', JSON.stringify({ statements, more: '' })],
  ['a list in which one statement stands twice', JSON.stringify([...statements, statements[2]])],
])('%s is counted', async (_, text) => {
  const { learners, lessons } = await rollOf(text)
  expect(learners.map(({ name, made }) => [name, made])).toEqual([['Ada', '2026-03-02T08:09:00.000Z']])
  const tack = learners[0].lessons.get('tack')
  // three answers of 90 s each
  expect(tack).toMatchObject({ done: true, score: 0.5, active: 270, stepsDone: 2 })
  expect(lessons.get('tack')?.wrong.map(({ answer: given }) => given)).toEqual([
    { form: 'choice', chosen: 'same' },
    { form: 'reading', entered: 75, tolerance: 1, unit: '' },
  ])
  const [warm] = countCauses(learners)
  expect(warm).toMatchObject({
    kind: 'unit too warm',
    hidden: 1,
    hit: 0,
    confused: [{ kind: 'tack too low', drills: 1 }],
  })
})

test('a CSV export says the same', async () => {
  const csv = [
    'timestamp,actor.name,actor.account.name,verb.id,object.id,object.definition.interactionType,object.definition.correctResponsesPattern,result.response,result.success,result.score.scaled,result.duration',
    `2026-03-02T08:04:00.000Z,Ada,ada,${verb('answered').id},${base}/tack--read,numeric,"[""40[:]42""]",75,false,,PT1M30S`,
    `2026-03-02T08:06:00.000Z,Ada,ada,${verb('completed').id},${base}/tack,,,,,0.5,`,
  ].join('\r\n')
  const { learners, lessons } = await rollOf(csv)
  expect(learners[0].lessons.get('tack')).toMatchObject({ done: true, score: 0.5, active: 90 })
  expect(lessons.get('tack')?.wrong[0].answer).toEqual({ form: 'reading', entered: 75, tolerance: 1, unit: '' })
})

const columns = [
  'timestamp',
  'actor.name',
  'actor.account.name',
  'verb.id',
  'object.id',
  'object.definition.interactionType',
  'object.definition.correctResponsesPattern',
  'result.response',
  'result.success',
  'result.score.scaled',
]

test.each([
  [
    'with a stroke and capitals',
    (path: string) => path.replaceAll('.', '/').replaceAll(/\b[a-z]/g, (a) => a.toUpperCase()),
  ],
  ['with blanks, and ID in capitals', (path: string) => path.replaceAll('.', ' ').replace(/id$/, 'ID')],
  ['with underscores and all capitals', (path: string) => path.replaceAll('.', '_').toUpperCase()],
])('headings of a table are read %s', async (_, headingOf) => {
  const csv = [
    columns.map(headingOf).join(';'),
    `2026-03-02T08:04:00.000Z;Ada;ada;${verb('answered').id};${base}/tack--read;numeric;40[:]42;75;FALSE;`,
    `2026-03-02T08:06:00.000Z;Ada;ada;${verb('completed').id};${base}/tack;;;;;0,5`,
  ].join('\r\n')
  const { learners, lessons } = await rollOf(csv)
  expect(learners.map(({ name }) => name)).toEqual(['Ada'])
  expect(learners[0].lessons.get('tack')).toMatchObject({ done: true, score: 0.5 })
  expect(lessons.get('tack')?.wrong[0].answer).toEqual({ form: 'reading', entered: 75, tolerance: 1, unit: '' })
})

/** An answer that would be right as a prediction, so that its step tells how the cell was read. */
async function stepJudged(success: string) {
  const csv = [
    'timestamp,actor.account.name,verb.id,object.id,object.definition.interactionType,object.definition.correctResponsesPattern,result.response,result.success',
    `2026-03-02T08:04:00.000Z,ada,${verb('answered').id},${base}/tack--guess,choice,same,same,${success}`,
  ].join('\n')
  const { learners, lessons } = await rollOf(csv)
  const [step] = lessons.get('tack')?.steps ?? []
  return { kind: step.kind, done: learners[0].lessons.get('tack')?.stepsDone }
}

test.each(['1', 'true', 'TRUE', 'yes', 'Yes', 'sí', 'VERDADERO'])(
  '%s in the column of success is success',
  async (cell) => {
    expect(await stepJudged(cell)).toEqual({ kind: 'expect', done: 1 })
  },
)

test.each(['0', 'false', 'False', 'no', 'FALSO'])('%s in the column of success is none', async (cell) => {
  expect(await stepJudged(cell)).toEqual({ kind: 'expect', done: 0 })
})

test('no success in the table is a prediction, and a word that is neither is not guessed at', async () => {
  expect(await stepJudged('')).toEqual({ kind: 'predict', done: 1 })
  await expect(stepJudged('perhaps')).rejects.toThrow('board.refused.statements')
})

test('statements of other activities are passed over, as every kind of them that the standard shows', async () => {
  const refused = { refused: { message: 'board.refused.statements', values: {} } }
  for (const statement of otherStatements) expect(await readHanded(JSON.stringify([statement]))).toEqual(refused)
  expect(await readHanded(JSON.stringify({ statements: otherStatements, more: '' }))).toEqual(refused)
  // and beside ours they change nothing
  const alone = await readHanded(JSON.stringify(statements))
  const mixed = await readHanded(JSON.stringify([...otherStatements, ...statements, null]))
  if ('refused' in alone || 'refused' in mixed) throw new Error('an export with statements of ours is refused')
  expect(mixed.results).toEqual(alone.results)
  // but are told
  expect(mixed.passedOver - alone.passedOver).toBe(otherStatements.length + 1)
})

test('a lesson that is completed without an answer counts where it says what it is', async () => {
  const completed = { ...statements[3], object: { id: `${base}/tack`, definition: {} } }
  expect(await readHanded(JSON.stringify([completed]))).toHaveProperty('refused')
  const type = 'http://adlnet.gov/expapi/activities/objective'
  const { learners } = await rollOf(
    JSON.stringify([{ ...completed, object: { id: `${base}/tack`, definition: { type } } }]),
  )
  expect(learners[0].lessons.get('tack')).toMatchObject({ done: true, score: 0.5 })
})

test.each(['[]', '[null, 3, {}]', '{"statements": {}}', '[{"actor": {"__proto__": 1}}]', '['.repeat(50_000)])(
  'an export without a statement of ours is refused in words: %.40s',
  async (text) => {
    expect(await readHanded(text)).toEqual({ refused: { message: 'board.refused.statements', values: {} } })
  },
)

test('a CSV export with a column given twice counts the first, and nothing is said on the console', async () => {
  const warned = vi.spyOn(console, 'warn')
  const csv = [
    'timestamp,actor.mbox,verb.id,object.id,object.definition.interactionType,result.success,result.response,result.response',
    `2026-03-02T08:04:00.000Z,mailto:ada@school.example,${verb('answered').id},${base}/tack--guess,choice,false,same,other`,
  ].join('\r\n')
  const { lessons } = await rollOf(csv)
  expect(lessons.get('tack')?.wrong.map(({ answer: given }) => given)).toEqual([{ form: 'choice', chosen: 'same' }])
  expect(warned).not.toHaveBeenCalled()
})

test.each([20, 400])('an answer that took a number of %i digits of seconds counts none', async (digits) => {
  const endless = answer('tack--read', 4, 'numeric', '40[:]42', '75', false)
  const { learners } = await rollOf(
    JSON.stringify([{ ...endless, result: { ...endless.result, duration: `PT${'9'.repeat(digits)}S` } }]),
  )
  expect(learners[0].lessons.get('tack')).toMatchObject({ active: 0 })
})
