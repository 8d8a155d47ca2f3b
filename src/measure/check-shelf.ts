/** Reads a shelf from the outside: text or data of unknown origin in, a legal shelf or every problem in words out. */
import * as v from 'valibot'
import { paperNames } from '../physics/paper.ts'
import { checkSetUp } from '../press/check-setup.ts'
import type { Problem } from '../press/problem.ts'
import { carried, pathOf, problem, problemFrom } from '../press/problem.ts'
import { longestName } from '../press/ranges.ts'
import type { Shelf, ShelfPress } from './shelf.ts'
import { shelfKind, shelfVersion } from './shelf.ts'
import type { WrittenInk, WrittenPaper } from './written-setup.ts'

export type CheckedShelf = { shelf: Shelf } | { problems: Problem[] }

/** Entries of one kind; hundreds of times what a class makes. */
const mostEntries = 500
/** Characters of a shelf's file: what that many entries need. */
const largestFile = 2_000_000

/** Two inks that make any legal part into a whole set-up; no name that is typed is like theirs. */
const otherInks = [
  { name: '\u2061first', tack: 10 },
  { name: '\u2061second', tack: 10 },
]

const name = v.pipe(
  v.string(carried('problem.shelf.text')),
  v.check(
    (text) => text.trim() !== '' && text.length <= longestName && !text.includes(' on '),
    carried('problem.shelf.name', { most: longestName }),
  ),
)

/** A list that is too long is told once, and its entries are not looked at: each might be a problem of its own. */
function entries<const Item extends v.GenericSchema>(item: Item) {
  const list = v.array(v.unknown(), carried('problem.shelf.list'))
  return v.pipe(list, v.maxLength(mostEntries, carried('problem.shelf.tooMany', { most: mostEntries })), v.array(item))
}

function fields<const Entries extends v.ObjectEntries>(shape: Entries) {
  const allowed = Object.keys(shape).join(', ')
  return v.strictObject(shape, (issue) =>
    issue.expected === 'never'
      ? carried('problem.shelf.unknown', { allowed })
      : issue.path
        ? carried('problem.shelf.missing')
        : carried('problem.shelf.object', { allowed }),
  )
}

function oneOf<const Names extends readonly string[]>(names: Names) {
  return v.picklist(names, carried('problem.shelf.choice', { allowed: names.join(', ') }))
}

const finite = v.pipe(v.number(carried('problem.shelf.number')), v.finite(carried('problem.shelf.number')))
const fitSchema = fields({
  status: oneOf(['E', 'T']),
  readings: finite,
  deviation: finite,
  values: entries(
    fields({
      kind: oneOf(['film', 'tack', 'dampening', 'settingGain', 'evenness']),
      ink: v.nullable(name),
      value: finite,
      standardError: finite,
    }),
  ),
})

const part = v.looseObject({ name }, carried('problem.shelf.object', { allowed: 'name' }))
const shelfSchema = fields({
  kind: v.literal(shelfKind, carried('problem.shelf.kind', { allowed: shelfKind })),
  version: v.literal(shelfVersion, carried('problem.shelf.version', { allowed: shelfVersion })),
  inks: entries(part),
  papers: entries(part),
  presses: entries(
    fields({
      name,
      press: v.looseObject({}, carried('problem.shelf.object', { allowed: 'kind, speed' })),
      paper: v.exactOptional(part),
      inks: v.exactOptional(entries(part)),
      fit: v.exactOptional(fitSchema),
    }),
  ),
})
type Outline = v.InferOutput<typeof shelfSchema>

/** The shelf in the text of a file. Never throws. */
export function readShelf(text: string): CheckedShelf {
  if (text.length > largestFile) {
    return { problems: [problem('', 'problem.shelf.tooLarge', { most: largestFile / 1_000_000 })] }
  }
  try {
    return checkShelf(JSON.parse(text))
  } catch (error) {
    if (error instanceof SyntaxError) return { problems: [problem('', 'problem.shelf.json')] }
    throw error
  }
}

/** Checks data that may be anything at all. */
export function checkShelf(input: unknown): CheckedShelf {
  const result = v.safeParse(shelfSchema, input)
  if (!result.success) return { problems: result.issues.map(({ path, message }) => problemFrom(pathOf(path), message)) }
  const outline = result.output
  const problems = [
    ...outline.inks.flatMap((ink, i) => problemsOf({ inks: [ink, otherInks[0]] }, 'inks[0]', `inks[${String(i)}]`)),
    ...outline.papers.flatMap((paper, i) => paperProblems(paper, `papers[${String(i)}]`)),
    ...outline.presses.flatMap((press, i) => pressProblems(press, `presses[${String(i)}]`)),
    ...(['inks', 'papers', 'presses'] as const).flatMap((list) => namedTwice(outline[list], list)),
  ]
  // What the set-up's check let pass is what the types say.
  return problems.length > 0
    ? { problems }
    : {
        shelf: {
          ...outline,
          inks: outline.inks as readonly object[] as readonly WrittenInk[],
          papers: outline.papers as readonly object[] as readonly WrittenPaper[],
          presses: outline.presses as readonly object[] as readonly ShelfPress[],
        },
      }
}

function paperProblems(paper: Outline['papers'][number], path: string): Problem[] {
  if (paperNames.some((own) => own === paper.name)) {
    return [problem(`${path}.name`, 'problem.shelf.supplied', { name: paper.name })]
  }
  return problemsOf({ inks: otherInks, paper }, 'paper', path)
}

function pressProblems({ press, paper, inks }: Outline['presses'][number], path: string): Problem[] {
  return [
    ...problemsOf({ inks: otherInks, press }, 'press', `${path}.press`),
    ...(paper ? paperProblems(paper, `${path}.paper`) : []),
    ...(inks ? problemsOf({ inks }, 'inks', `${path}.inks`) : []),
  ]
}

/** The problems of a set-up, told as those of the part of it that was put there. */
function problemsOf(setUp: object, part: string, path: string): Problem[] {
  const checked = checkSetUp(setUp)
  if ('setUp' in checked) return []
  return checked.problems.map((found) => ({ ...found, path: found.path.replace(part, path) }))
}

function namedTwice(list: readonly { name: string }[], path: string): Problem[] {
  const key = (text: string) => text.trim().toLowerCase()
  return list.flatMap((entry, i) =>
    list.findIndex((other) => key(other.name) === key(entry.name)) < i
      ? [problem(`${path}[${String(i)}].name`, 'problem.shelf.twice', { name: entry.name })]
      : [],
  )
}
