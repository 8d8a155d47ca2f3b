/** Reads a shelf from the outside: text or data of unknown origin in, a legal shelf or every problem in words out. */
import * as v from 'valibot'
import { paperNames } from '../physics/paper.ts'
import type { Problem } from '../press/check-setup.ts'
import { checkSetUp } from '../press/check-setup.ts'
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
  v.string('is no name; allowed is a text'),
  v.check(
    (text) => text.trim() !== '' && text.length <= longestName && !text.includes(' on '),
    `is no name; allowed is a text of 1 to ${String(longestName)} characters without the word "on" standing alone`,
  ),
)

function entries<const Item extends v.GenericSchema>(item: Item) {
  const list = v.array(item, 'is no list; allowed is a list')
  return v.pipe(list, v.maxLength(mostEntries, `holds too many entries; allowed are ${String(mostEntries)}`))
}

function fields<const Entries extends v.ObjectEntries>(shape: Entries) {
  const known = Object.keys(shape).join(', ')
  return v.strictObject(shape, (issue) =>
    issue.expected === 'never'
      ? `not known here; allowed are ${known}`
      : issue.path
        ? 'is missing'
        : `is no object; allowed is one with ${known}`,
  )
}

const finite = v.pipe(v.number('is no number'), v.finite('is no number'))
const fitSchema = fields({
  status: v.picklist(['E', 'T'], 'is no status; allowed are E and T'),
  readings: finite,
  deviation: finite,
  values: entries(
    fields({
      kind: v.picklist(
        ['film', 'tack', 'dampening', 'settingGain', 'evenness'],
        'is nothing that is fitted; allowed are film, tack, dampening, settingGain, evenness',
      ),
      ink: v.nullable(name),
      value: finite,
      standardError: finite,
    }),
  ),
})

const part = v.looseObject({ name }, 'is no object; allowed is one with a name')
const shelfSchema = fields({
  kind: v.literal(shelfKind, `is no shelf; allowed is "${shelfKind}"`),
  version: v.literal(shelfVersion, `is not a version this program reads; allowed is ${String(shelfVersion)}`),
  inks: entries(part),
  papers: entries(part),
  presses: entries(
    fields({
      name,
      press: v.looseObject({}, 'is no object; allowed is a press'),
      paper: v.exactOptional(part),
      inks: v.exactOptional(v.array(part, 'is no list; allowed is a list of inks')),
      fit: v.exactOptional(fitSchema),
    }),
  ),
})
type Outline = v.InferOutput<typeof shelfSchema>

/** The shelf in the text of a file. Never throws. */
export function readShelf(text: string): CheckedShelf {
  const problem = (message: string): CheckedShelf => ({ problems: [{ path: '', message }] })
  if (text.length > largestFile)
    return problem(`is larger than ${String(largestFile / 1_000_000)} MB; a shelf is far smaller`)
  try {
    return checkShelf(JSON.parse(text))
  } catch (error) {
    if (error instanceof SyntaxError) return problem('is not JSON; allowed is the file of a shelf as it was saved')
    throw error
  }
}

/** Checks data that may be anything at all. */
export function checkShelf(input: unknown): CheckedShelf {
  const result = v.safeParse(shelfSchema, input)
  if (!result.success) return { problems: result.issues.map(({ path, message }) => ({ path: pathOf(path), message })) }
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
    return [
      { path: `${path}.name`, message: `"${paper.name}" is a paper as supplied; an own paper needs another name` },
    ]
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
  return checked.problems.map((problem) => ({ ...problem, path: problem.path.replace(part, path) }))
}

function namedTwice(list: readonly { name: string }[], path: string): Problem[] {
  const key = (text: string) => text.trim().toLowerCase()
  return list.flatMap((entry, i) =>
    list.findIndex((other) => key(other.name) === key(entry.name)) < i
      ? [
          {
            path: `${path}[${String(i)}].name`,
            message: `"${entry.name}" is on the shelf already; every entry needs a name of its own`,
          },
        ]
      : [],
  )
}

/** papers[2].name */
function pathOf(path: readonly { key: unknown }[] | undefined): string {
  return (path ?? [])
    .map(({ key }) => (typeof key === 'number' ? `[${String(key)}]` : `.${String(key)}`))
    .join('')
    .replace(/^\./, '')
}
