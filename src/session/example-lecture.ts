/** A ready lecture, made of the scenarios, for a teacher who has ten minutes and no time to prepare. Its words stand elsewhere. */
import { checkSetUp } from '../press/check-setup.ts'
import type { SetUp } from '../press/setup.ts'
import type { ScenarioName } from './scenarios.ts'
import { scenarios } from './scenarios.ts'
import type { Scene } from './scene.ts'

interface ExampleScene extends Pick<Scene, 'picture' | 'number' | 'plays' | 'waits'> {
  readonly scenario: ScenarioName
  readonly view?: Scene['view']
  readonly beside?: ScenarioName
}

const examples = {
  line: { scenario: 'descending', picture: 'line', view: { unit: 1 } },
  stair: { scenario: 'descending', picture: 'ladder' },
  takes: {
    scenario: 'descending',
    picture: 'section',
    number: { of: 'trap', ink: 'yellow', below: 'magenta' },
    plays: true,
  },
  turned: { scenario: 'reversed', picture: 'ladder' },
  fails: { scenario: 'reversed', picture: 'section', number: { of: 'kept', ink: 'black' }, plays: true, waits: true },
  both: { scenario: 'descending', picture: 'section', number: { of: 'lifted' }, plays: true, beside: 'reversed' },
  faces: {
    scenario: 'descending',
    picture: 'loupe',
    // Without the black, which covers everything it lies under.
    view: { patch: [1, 2, 3] },
    number: { of: 'kept', ink: 'cyan' },
    waits: true,
    beside: 'reversed',
  },
  paper: {
    scenario: 'weak',
    picture: 'loupe',
    // Where black prints alone, every later blanket pulls at it, and at the paper below.
    view: { patch: [0] },
    number: { of: 'picked' },
    waits: true,
  },
  rule: { scenario: 'descending', picture: 'words' },
} as const satisfies Readonly<Record<string, ExampleScene>>

export type ExampleName = keyof typeof examples
export const exampleNames = Object.keys(examples) as ExampleName[]

/** What a scene of the example says. */
export type ExampleWords = Pick<Scene, 'name' | 'note' | 'question'> & { readonly captions?: readonly [string, string] }

export function exampleLecture(wordsOf: (name: ExampleName) => ExampleWords): Scene[] {
  return exampleNames.map((example) => {
    const { scenario, view = {}, beside, ...how }: ExampleScene = examples[example]
    const { captions: [caption = '', second = ''] = [], ...said } = wordsOf(example)
    const pair = beside && { caption, beside: { setUp: setUpOf(beside), caption: second } }
    return { ...said, setUp: setUpOf(scenario), view, ...how, ...pair }
  })
}

function setUpOf(scenario: ScenarioName): SetUp {
  const checked = checkSetUp(scenarios[scenario])
  if ('problems' in checked) throw new Error(checked.problems.map(({ message }) => message).join('; '))
  return checked.setUp
}
