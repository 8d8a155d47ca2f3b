/**
 * Set-ups of one made-up job, a poster for a harvest market, each to be loaded with one click. They are given as a file
 * would give them. Graded sets are common practice: 16, 14, 12, 10 sheet-fed; 12, 11, 10, 9 on the web.
 */
import { processNames } from '../press/presets.ts'
import type { Ink, PressKind, Reading } from '../press/setup.ts'

export interface Scenario {
  inks: Pick<Ink, 'name' | 'tack'>[]
  paper: string
  press: { kind: PressKind; speed?: number }
  reading: Reading
}

const sheetFed = [16, 14, 12, 10]
const web = [12, 11, 10, 9]

/** Black, cyan, magenta and yellow with these tacks. */
function inks(tacks: number[]): Scenario['inks'] {
  return processNames.map((name, unit) => ({ name, tack: tacks[unit] }))
}

/** On a sheet-fed press and coated paper, first sheet: where a wrong order shows at its plainest. */
function poster(inks: Scenario['inks']): Scenario {
  return { inks, paper: 'coated', press: { kind: 'sheet-fed' }, reading: 'first' }
}

const [black, cyan, magenta, yellow] = inks(sheetFed)

export const scenarios = {
  descending: poster([black, cyan, magenta, yellow]),
  reversed: poster([yellow, magenta, cyan, black]),
  equal: poster(inks([13, 13, 13, 13])),
  moved: poster([cyan, black, magenta, yellow]),
  fast: {
    inks: [black, cyan, magenta, yellow],
    paper: 'light-weight coated',
    press: { kind: 'web', speed: 10 },
    reading: 'settled',
  },
  weak: { inks: inks(web), paper: 'weak uncoated', press: { kind: 'web', speed: 10 }, reading: 'settled' },
} satisfies Record<string, Scenario>

export type ScenarioName = keyof typeof scenarios
export const scenarioNames = Object.keys(scenarios) as ScenarioName[]
