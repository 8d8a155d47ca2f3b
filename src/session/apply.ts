/**
 * Applies one change to a set-up. The changed set-up is written out and read back by the same checker that reads files,
 * so that nothing gets in by hand that would be refused from outside.
 */
import type { Checked } from '../press/check-setup.ts'
import { checkSetUp } from '../press/check-setup.ts'
import { usualSpeed } from '../press/presets.ts'
import { problem } from '../press/problem.ts'
import type { Reading, SetUp } from '../press/setup.ts'
import type { Change } from './change.ts'
import { moved } from './order.ts'
import { scenarios } from './scenarios.ts'
import type { WrittenSetUp } from './write-setup.ts'
import { writeSetUp } from './write-setup.ts'

/** The set-up with the change made, or every reason in words why it cannot be; `setUp` itself stays as it is. */
export function apply(setUp: SetUp, change: Change): Checked {
  const wrongUnit = unitsNamed(change).find((unit) => !(unit in setUp.inks))
  if (wrongUnit !== undefined) {
    return { problems: [problem('', 'problem.noUnit', { given: wrongUnit + 1, most: setUp.inks.length })] }
  }
  return checkSetUp(changed(writeSetUp(setUp), change))
}

/** Units (from 0) that the change speaks of. */
function unitsNamed(change: Change): number[] {
  if (change.kind === 'move ink') return [change.from, change.to]
  if (change.kind === 'edit ink' || change.kind === 'remove ink') return [change.unit]
  return []
}

function changed(written: WrittenSetUp, change: Change): unknown {
  const { inks, paper, press } = written
  switch (change.kind) {
    case 'move ink':
      return { ...written, inks: moved(inks, change.from, change.to) }
    case 'edit ink':
      return { ...written, inks: inks.map((ink, unit) => (unit === change.unit ? edited(ink, change) : ink)) }
    case 'add ink':
      return { ...written, inks: [...inks, change.ink] }
    case 'remove ink':
      return { ...written, inks: inks.filter((_, unit) => unit !== change.unit) }
    case 'take paper':
      return { ...written, paper: change.paper }
    case 'edit paper':
      return { ...written, paper: edited(paper, change) }
    case 'take press':
      return {
        ...written,
        press: { ...edited(press, intervalFollows), kind: change.press, speed: usualSpeed[change.press] },
      }
    case 'edit press':
      return { ...written, press: edited(press, change) }
    case 'read':
      return { ...written, reading: change.reading }
    case 'run on':
      return { ...written, reading: nextSheet(written.reading) }
    case 'seed':
      return { ...written, seed: change.seed }
    case 'take scenario':
      return scenarios[change.scenario]
    case 'load':
      return change.given
  }
}

const intervalFollows = { field: 'interval', value: undefined }

/** The object with one field set, or left out where the value is undefined. */
function edited(object: object, { field, value }: { field: string; value: unknown }): object {
  if (value !== undefined) return { ...object, [field]: value }
  return Object.fromEntries(Object.entries(object).filter(([other]) => other !== field))
}

/** A settled press prints the same sheet again. */
function nextSheet(reading: Reading): Reading {
  if (reading === 'settled') return reading
  return { sheet: reading === 'first' ? 2 : reading.sheet + 1 }
}
