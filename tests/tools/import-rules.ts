/**
 * Which folder of src may import from which, and which may use the libraries that draw.
 * The check also fails when it has not looked at every source file: a rule that looks at nothing never complains.
 */
import { readdirSync } from 'node:fs'
import { join, sep } from 'node:path'
import { cruise } from 'dependency-cruiser'
import type { IForbiddenRuleType, IViolation } from 'dependency-cruiser'

const press = ['words', 'physics', 'colour']
const measure = [...press, 'press']
const teaching = [...measure, 'measure']
const session = [...teaching, 'lesson', 'drill']
const classes = [...session, 'session']
const showing = [...classes, 'class']

/** For each folder of src, the others it may import from. A folder not listed here is refused. */
const mayImportFrom: Record<string, string[]> = {
  words: [],
  physics: [],
  colour: [],
  press,
  measure,
  lesson: teaching,
  drill: teaching,
  session,
  class: classes,
  view: classes,
  report: showing,
  ui: [...showing, 'view', 'report'],
  command: [...showing, 'report'],
  build: [],
}

const directions: IForbiddenRuleType[] = Object.entries(mayImportFrom).map(([folder, others]) => ({
  name: `${folder} imports only from ${['itself', ...others].join(', ')}`,
  from: { path: `^src/${folder}/` },
  to: {
    path: '^src/',
    pathNot: `^src/(${[folder, ...others].join('|')})/`,
    // The catalogue may name the types whose values it puts into words; it runs nothing of theirs.
    ...(folder === 'words' ? { dependencyTypesNot: ['type-only'] } : {}),
  },
}))

/** Matches a package however it was found: resolved below node_modules, or by its bare name. */
function packages(...names: string[]): string {
  return `(^|node_modules/)(${names.join('|')})(/|$)`
}

const rules: IForbiddenRuleType[] = [
  ...directions,
  { name: 'nothing imports the page itself', from: {}, to: { path: '^src/[^/]+$' } },
  { name: 'the program does not import its tests', from: { path: '^src/' }, to: { path: '^tests/' } },
  { name: 'no circle of imports', from: {}, to: { circular: true } },
  { name: 'every import is found', from: {}, to: { couldNotResolve: true } },
  { name: 'only view draws with pixi', from: { pathNot: '^src/view/' }, to: { path: packages('pixi\\.js', '@pixi') } },
  {
    name: 'only ui builds elements with lit',
    from: { pathNot: '^src/ui/' },
    to: { path: packages('lit', 'lit-html', 'lit-element', '@lit') },
  },
  {
    name: 'what needs a page stays out of the core',
    from: { path: `^src/(${[...session, 'session', 'class', 'command'].join('|')})/` },
    to: { path: [packages('uplot', 'temml', 'dompurify'), '\\.css$'] },
  },
  {
    name: 'only commands and the build use Node',
    from: { pathNot: '^src/(command|build)/' },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'what the page needs is no development tool',
    from: { path: '^src/', pathNot: '^src/build/' },
    to: { dependencyTypes: ['npm-dev'] },
  },
]

/** What the check saw: files and imports looked at, and one plain line for each thing wrong. */
export interface ImportReport {
  files: number
  imports: number
  problems: string[]
}

/** Checks every TypeScript file below `src` in the folder `root`. */
export async function checkImports(root: string): Promise<ImportReport> {
  const onDisk = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => ['src', ...path.split(sep)].join('/'))
  const { output } = await cruise(
    ['src'],
    {
      baseDir: root,
      ruleSet: { forbidden: rules },
      validate: true,
      tsPreCompilationDeps: true,
      doNotFollow: 'node_modules',
    },
    {
      extensions: ['.ts', '.js', '.json', '.css'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default'],
    },
  )
  if (typeof output === 'string') throw new Error('The import check got a text where it expects a list of modules.')

  const lookedAt = new Set(output.modules.map((module) => module.source))
  const problems = [
    ...(onDisk.length === 0 ? ['src: holds no TypeScript file, so nothing was checked'] : []),
    ...onDisk.filter((path) => !lookedAt.has(path)).map((path) => `${path}: was not looked at`),
    ...onDisk
      .filter(isInUnknownFolder)
      .map((path) => `${path}: its folder is none of ${Object.keys(mayImportFrom).join(', ')}`),
    ...output.summary.violations.map(sentence),
  ]
  const imports = output.modules
    .filter((module) => module.source.startsWith('src/'))
    .reduce((sum, module) => sum + module.dependencies.length, 0)
  return { files: onDisk.length - onDisk.filter((path) => !lookedAt.has(path)).length, imports, problems }
}

function isInUnknownFolder(path: string): boolean {
  const [, folder, ...rest] = path.split('/')
  return rest.length > 0 && !(folder in mayImportFrom)
}

function sentence({ from, to, rule }: IViolation): string {
  return `${from}: imports ${to}, but ${rule.name}`
}
