import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { checkImports } from './import-rules.ts'

let root: string

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'imports-'))
  mkdirSync(join(root, 'src'))
})

afterEach(() => {
  rmSync(root, { recursive: true })
})

function write(files: Record<string, string>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(root, path)), { recursive: true })
    writeFileSync(join(root, path), text)
  }
}

const nip = { 'src/physics/nip.ts': 'export const nip = 1;' }

test('imports that point the right way pass', async () => {
  write({
    ...nip,
    'src/press/unit.ts': "import { nip } from '../physics/nip.ts'; export const unit = nip;",
    'src/session/store.ts': "import { unit } from '../press/unit.ts'; export const store = unit;",
    'src/main.ts': "import { store } from './session/store.ts'; export default store;",
  })
  expect(await checkImports(root)).toEqual({ files: 4, imports: 3, problems: [] })
})

test('having looked at nothing is a failure', async () => {
  const { files, problems } = await checkImports(root)
  expect(files).toBe(0)
  expect(problems).toHaveLength(1)
})

test('the words may name the types that they put into words', async () => {
  write({
    'src/press/run.ts': 'export type Run = number;',
    'src/words/en.ts': "import type { Run } from '../press/run.ts'; export const en = (run: Run) => String(run);",
  })
  expect((await checkImports(root)).problems).toEqual([])
})

test('a style sheet and a worker are found', async () => {
  write({
    'src/ui/page.css': '',
    'src/ui/page.ts': "import './page.css';",
    'src/press/worker.ts': 'export {};',
    'src/session/compute.ts': "import PressWorker from '../press/worker.ts?worker'; export const worker = PressWorker;",
  })
  expect((await checkImports(root)).problems).toEqual([])
})

interface Wrong {
  what: string
  rule: string
  files: Record<string, string>
}

test.each<Wrong>([
  {
    what: 'against the direction',
    rule: 'physics imports only from itself',
    files: {
      'src/physics/nip.ts': "import { run } from '../press/run.ts'; export const nip = run;",
      'src/press/run.ts': 'export const run = 1;',
    },
  },
  {
    what: 'of a type against the direction',
    rule: 'physics imports only from itself',
    files: {
      'src/physics/nip.ts': "import type { Run } from '../press/run.ts'; export const nip = 1 as Run;",
      'src/press/run.ts': 'export type Run = number;',
    },
  },
  {
    what: 'made while running, against the direction',
    rule: 'physics imports only from itself',
    files: {
      'src/physics/nip.ts': "export const nip = () => import('../press/run.ts');",
      'src/press/run.ts': 'export const run = 1;',
    },
  },
  {
    what: 'from the lessons to the drill',
    rule: 'lesson imports only from itself',
    files: {
      'src/lesson/run.ts': "import { judge } from '../drill/judge.ts'; export const run = judge;",
      'src/drill/judge.ts': 'export const judge = 1;',
    },
  },
  {
    what: 'from the view to the elements',
    rule: 'view imports only from itself',
    files: {
      'src/view/scene.ts': "import { row } from '../ui/row.ts'; export const scene = row;",
      'src/ui/row.ts': 'export const row = 1;',
    },
  },
  {
    what: 'from a command to the view',
    rule: 'command imports only from itself',
    files: {
      'src/command/solve.ts': "import { scene } from '../view/scene.ts'; export const solve = scene;",
      'src/view/scene.ts': 'export const scene = 1;',
    },
  },
  {
    what: 'of running code into the words',
    rule: 'words imports only from itself',
    files: { ...nip, 'src/words/en.ts': "import { nip } from '../physics/nip.ts'; export const en = nip;" },
  },
  {
    what: 'in a circle',
    rule: 'no circle of imports',
    files: {
      'src/physics/a.ts': "import { b } from './b.ts'; export const a = () => b;",
      'src/physics/b.ts': "import { a } from './a.ts'; export const b = () => a;",
    },
  },
  {
    what: 'of a file that is not there',
    rule: 'every import is found',
    files: { 'src/physics/nip.ts': "import { film } from './film.ts'; export const nip = film;" },
  },
  {
    what: 'of Node outside the commands',
    rule: 'only commands and the build use Node',
    files: { 'src/report/csv.ts': "import { readFileSync } from 'node:fs'; export const csv = readFileSync;" },
  },
  {
    what: 'of the page itself',
    rule: 'nothing imports the page itself',
    files: { 'src/main.ts': 'export {};', 'src/ui/row.ts': "import '../main.ts';" },
  },
  {
    what: 'or any other line in an unknown folder',
    rule: 'its folder is none of',
    files: { 'src/utils/sum.ts': 'export const sum = 1;' },
  },
])('an import $what is reported', async ({ rule, files }) => {
  write(files)
  expect((await checkImports(root)).problems).toContainEqual(expect.stringContaining(rule))
})

test.each([
  ['pixi.js', 'session', 'only view draws with pixi'],
  ['pixi.js', 'ui', 'only view draws with pixi'],
  ['lit', 'view', 'only ui builds elements with lit'],
  ['lit/directives/repeat.js', 'report', 'only ui builds elements with lit'],
  ['uplot', 'measure', 'what needs a page stays out of the core'],
])('%s is kept out of %s', async (library, folder, rule) => {
  write({ [`src/${folder}/made.ts`]: `import '${library}';` })
  expect((await checkImports(root)).problems).toContainEqual(expect.stringContaining(rule))
})
