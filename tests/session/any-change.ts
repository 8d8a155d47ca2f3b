/** Changes drawn at random, legal and illegal alike: whatever a person may try on the bench. */
import fc from 'fast-check'
import { paperNames } from '../../src/physics/paper.ts'
import type { RangeName } from '../../src/press/ranges.ts'
import { ranges } from '../../src/press/ranges.ts'
import type { Change, PaperField, PressField } from '../../src/session/change.ts'
import { scenarioNames } from '../../src/session/scenarios.ts'
import { spotInks } from '../../src/session/spot-inks.ts'

/** Mostly in the range, now and then beyond its ends or no number at all. */
function tried(name: RangeName): fc.Arbitrary<number> {
  const { least, most } = ranges[name]
  return fc.oneof(
    { weight: 6, arbitrary: fc.double({ min: least, max: most, noNaN: true }) },
    { weight: 1, arbitrary: fc.double({ min: most, max: 1e6, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(Number.NaN, Infinity, -1) },
  )
}

const unit = fc.integer({ min: -1, max: 9 })

const inkEdit = (['tack', 'film', 'coverage', 'temperature', 'dampening', 'soiled'] as const).map((field) =>
  fc.record({
    kind: fc.constant('edit ink' as const),
    unit,
    field: fc.constant(field),
    value: field === 'tack' ? tried(field) : fc.option(tried(field), { nil: undefined }),
  }),
)
const paperEdit = (['surfaceStrength', 'absorbency', 'evenness'] as const satisfies PaperField[]).map((field) =>
  fc.record({
    kind: fc.constant('edit paper' as const),
    field: fc.constant(field),
    value: fc.option(tried(field), { nil: undefined }),
  }),
)
const pressEdit = (['speed', 'interval', 'temperature', 'dampening'] as const satisfies PressField[]).map((field) =>
  fc.record({
    kind: fc.constant('edit press' as const),
    field: fc.constant(field),
    value: fc.option(tried(field), { nil: undefined }),
  }),
)

export const anyChange: fc.Arbitrary<Change> = fc.oneof(
  fc.record({ kind: fc.constant('move ink' as const), from: unit, to: unit }),
  ...inkEdit,
  fc.record({
    kind: fc.constant('edit ink' as const),
    unit,
    field: fc.constant('dryBefore' as const),
    value: fc.constantFrom(true, undefined),
  }),
  fc.record({ kind: fc.constant('add ink' as const), ink: fc.constantFrom(...spotInks) }),
  fc.record({ kind: fc.constant('remove ink' as const), unit }),
  fc.record({ kind: fc.constant('take paper' as const), paper: fc.constantFrom(...paperNames) }),
  ...paperEdit,
  fc.record({ kind: fc.constant('take press' as const), press: fc.constantFrom('sheet-fed' as const, 'web' as const) }),
  ...pressEdit,
  fc.record({
    kind: fc.constant('edit press' as const),
    field: fc.constant('waterless' as const),
    value: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('read' as const),
    reading: fc.oneof(
      fc.constantFrom('first' as const, 'settled' as const),
      fc.record({ sheet: fc.integer({ min: -2, max: 40 }) }),
    ),
  }),
  fc.record({ kind: fc.constant('run on' as const) }),
  fc.record({ kind: fc.constant('seed' as const), seed: fc.integer({ min: -5, max: 50 }) }),
  fc.record({ kind: fc.constant('take scenario' as const), scenario: fc.constantFrom(...scenarioNames) }),
  fc.record({ kind: fc.constant('load' as const), given: fc.anything() }),
)
