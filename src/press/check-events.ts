/** Reads the events of a run from the outside: a list of unknown origin in, events or every problem in words out. */
import * as v from 'valibot'
import type { Problem } from './check-setup.ts'
import { allowed, ranges } from './ranges.ts'
import type { RunEvent } from './run-events.ts'
import type { SetUp } from './setup.ts'

const kinds = ['stop', 'wash-up', 'ink change'] as const
/** Far more than happen in any run. */
const mostEvents = 200

type Changeable = 'tack' | 'film' | 'temperature' | 'dampening'

function number(name: Changeable | 'sheet') {
  const { least, most } = ranges[name]
  const message = `is not allowed; allowed are ${allowed(name)}`
  return v.pipe(
    v.number(message),
    v.check((value) => value >= least && value <= most && (name !== 'sheet' || Number.isInteger(value)), message),
  )
}

const eventSchema = v.strictObject({
  kind: v.picklist(kinds, `is no event; allowed are ${kinds.join(', ')}`),
  sheet: number('sheet'),
  ink: v.exactOptional(v.string('is no name of an ink')),
  tack: v.exactOptional(number('tack')),
  film: v.exactOptional(number('film')),
  temperature: v.exactOptional(number('temperature')),
  dampening: v.exactOptional(number('dampening')),
})

const eventsSchema = v.pipe(
  v.array(eventSchema, 'is not allowed; allowed is a list of events'),
  v.maxLength(mostEvents, `holds too many events; allowed are up to ${mostEvents}`),
)

/**
 * Checks a list such as [{ "kind": "wash-up", "sheet": 5000, "ink": "yellow" }]; an "ink change" states what becomes of
 * the ink: tack, film, temperature, dampening. Returns the events in order of their sheets. Never throws.
 */
export function checkEvents(input: unknown, setUp: SetUp): { events: RunEvent[] } | { problems: Problem[] } {
  const result = v.safeParse(eventsSchema, input)
  if (!result.success) {
    return {
      problems: result.issues.map(({ path = [], message }) => ({
        path: ['events', ...path.map(({ key }) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`))].join(''),
        message: message.startsWith('Invalid') ? 'is missing, or not known here' : message,
      })),
    }
  }
  const problems: Problem[] = []
  const events = result.output.map((given, index): RunEvent => {
    const { kind, sheet, ink, ...changed } = given
    if (kind === 'stop') return { kind, sheet }
    const unit = setUp.inks.findIndex(({ name }) => name === ink)
    const names = setUp.inks.map(({ name }) => name).join(', ')
    if (unit < 0) problems.push({ path: `events[${index}].ink`, message: `is no loaded ink; loaded are ${names}` })
    if (kind === 'wash-up') return { kind, sheet, unit }
    if (Object.keys(changed).length === 0) {
      problems.push({
        path: `events[${index}]`,
        message: 'changes nothing; state tack, film, temperature or dampening',
      })
    }
    return { kind, sheet, unit, ink: changed }
  })
  return problems.length > 0 ? { problems } : { events: events.sort((a, b) => a.sheet - b.sheet) }
}
