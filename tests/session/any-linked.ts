/** Set-ups and views drawn from all that is legal, odd names and numbers of many decimals included, for links and files. */
import fc from 'fast-check'
import { levels } from '../../src/drill/level.ts'
import { paperNames, papers } from '../../src/physics/paper.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import type { RangeName } from '../../src/press/ranges.ts'
import { longestName, ranges } from '../../src/press/ranges.ts'
import type { SetUp } from '../../src/press/setup.ts'
import { mostScenes } from '../../src/session/scene.ts'
import { unitNames } from '../../src/session/unit-names.ts'
import type { ViewState } from '../../src/session/view-state.ts'
import { hideable, viewNames } from '../../src/session/view-state.ts'

/** Any number of a range, with all its decimals. */
function within(name: RangeName): fc.Arbitrary<number> {
  const { least, most } = ranges[name]
  if ('whole' in ranges[name]) return fc.integer({ min: least, max: most })
  return fc.double({ min: least, max: most, noNaN: true }).map((value) => value + 0)
}

const oddName = fc.oneof(
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }),
  fc.string({ unit: 'binary', minLength: 1, maxLength: 20 }),
  fc.constantFrom(
    '__proto__',
    'constructor',
    'a,b:c=d&e',
    '50 % of 100',
    '~x',
    'Grün',
    '墨'.repeat(40),
    '\ud800',
    'a+b',
    'none',
    'x. ',
  ),
)

function isLegalName(name: string): boolean {
  const inks = [
    { name, tack: 10 },
    { name: '\u2061other', tack: 10 },
  ]
  return name.length <= longestName && 'setUp' in checkSetUp({ inks })
}
const anyName = oddName.filter(isLegalName).map((name) => name.trim())

const anyColour = fc.oneof(
  fc.integer({ min: 0, max: 0xffffff }).map((rgb) => `#${rgb.toString(16).padStart(6, '0')}`),
  fc
    .tuple(
      fc.double({ min: 0, max: 100, noNaN: true }),
      fc.double({ min: -150, max: 150, noNaN: true }),
      fc.double({ min: -150, max: 150, noNaN: true }),
    )
    .map(([lightness, a, b]): [number, number, number] => [lightness + 0, a + 0, b + 0]),
)

function inks(least: number, most: number) {
  const ink = fc.record(
    {
      name: anyName,
      tack: within('tack'),
      film: within('film'),
      coverage: within('coverage'),
      temperature: within('temperature'),
      dampening: within('dampening'),
      soiled: within('soiled'),
      colour: anyColour,
      dryBefore: fc.boolean(),
    },
    { requiredKeys: ['name', 'tack'] },
  )
  return fc.uniqueArray(ink, { minLength: least, maxLength: most, selector: ({ name }) => name.toLowerCase() })
}

const anyPaper = fc.record(
  {
    base: fc.constantFrom(...paperNames),
    name: anyName,
    surfaceStrength: within('surfaceStrength'),
    absorbency: within('absorbency'),
    evenness: within('evenness'),
    contactRate: within('contactRate'),
    holdLimit: within('holdLimit'),
    freeSplit: within('freeSplit'),
    settingGain: within('settingGain'),
    settingTime: within('settingTime'),
    wetLoss: within('wetLoss'),
  },
  { requiredKeys: ['base'] },
)

const anyPress = fc.record(
  {
    kind: fc.constantFrom('sheet-fed' as const, 'web' as const),
    speed: within('speed'),
    interval: within('interval'),
    temperature: within('temperature'),
    dampening: within('dampening'),
    waterless: fc.boolean(),
  },
  { requiredKeys: ['kind'] },
)

export const anySetUp: fc.Arbitrary<SetUp> = fc
  .record({
    inks: inks(2, 8),
    paper: anyPaper,
    press: anyPress,
    reading: fc.oneof(fc.constantFrom('first', 'settled'), fc.record({ sheet: within('sheet') })),
    seed: within('seed'),
  })
  .map((given) => {
    const checked = checkSetUp(given)
    if ('problems' in checked) throw new Error(JSON.stringify(checked.problems))
    return checked.setUp
  })

/** A view of a press with `units` units. */
export function anyView(units: number): fc.Arbitrary<ViewState> {
  const unit = fc.integer({ min: 0, max: units - 1 })
  return fc.record(
    {
      view: fc.constantFrom(...viewNames.filter((name) => name !== 'bench')),
      patch: fc.uniqueArray(unit, { maxLength: units - 1 }).map((given) => given.toSorted((a, b) => a - b)),
      unit,
      face: fc.constant('marks' as const),
      measures: fc.tuple(...Object.values(unitNames).map((names) => fc.constantFrom(...names))),
      lesson: fc.constantFrom('tack', 'two-inks-wrong-order'),
      drill: fc.record({ level: fc.constantFrom(...levels), seed: within('seed') }),
      scene: fc.integer({ min: 0, max: mostScenes - 1 }),
      hide: fc.subarray([...hideable], { minLength: 1 }),
    },
    { requiredKeys: [] },
  )
}

/** Everything that can make a link long: eight inks, three byte names, every field stated with all its decimals. */
export const longestSetUp: SetUp = {
  inks: Array.from({ length: 8 }, (_, unit) => ({
    name: `${unit}${'墨'.repeat(longestName - 1)}`,
    tack: 2 + 100 / 3,
    film: 1 + 20 / 3,
    coverage: 2 / 3,
    temperature: 10 + 100 / 3,
    dampening: 2 / 3,
    soiled: 1 / 3,
    colour: [100, -400 / 3, -400 / 3] as const,
    dryBefore: false,
  })),
  paper: {
    ...papers['light-weight coated'],
    name: '紙'.repeat(longestName),
    surfaceStrength: 500 / 3,
    contactRate: 10 / 3,
    holdLimit: 10 / 3,
    freeSplit: 1 / 3,
    settingGain: 1 / 3,
    settingTime: 10 / 3,
    evenness: 10 / 3,
    absorbency: 10 / 3,
    wetLoss: 1 / 7,
  },
  press: {
    kind: 'sheet-fed',
    speed: 40 / 3,
    interval: 10 / 3,
    intervalPinned: true,
    temperature: 100 / 3,
    dampening: 2 / 3,
    waterless: true,
  },
  reading: { sheet: 100_000 },
  seed: 0xffffffff,
}

const medianLength = hideable.map((part) => part.length).toSorted((a, b) => a - b)[Math.ceil(hideable.length / 2)]

export const longestView: ViewState = {
  view: 'instruments',
  patch: [0, 1, 2, 3, 4, 5, 6],
  unit: 7,
  face: 'marks',
  measures: ['sheets/h', 'degF', 'g/m2'],
  lesson: `a${'b'.repeat(59)}`,
  drill: { level: 'medium', seed: 0xffffffff },
  scene: mostScenes - 1,
  // The longer half of the names, so that neither telling what is hidden nor what is shown is short.
  hide: hideable.filter((part) => part.length >= medianLength),
}
