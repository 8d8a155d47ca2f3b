/** Reads the events of a run from the outside: a list of unknown origin in, events or every problem in words out. */
import * as v from 'valibot'
import type { Problem } from './problem.ts'
import { carried, pathOf, problem, problemFrom } from './problem.ts'
import { rangeSaid, ranges } from './ranges.ts'
import type { RunEvent } from './run-events.ts'
import type { SetUp } from './setup.ts'

const kinds = ['stop', 'wash-up', 'ink change'] as const
/** Far more than happen in any run. */
const mostEvents = 200

type Changeable = 'tack' | 'film' | 'temperature' | 'dampening'

function number(name: Changeable | 'sheet') {
  const { least, most } = ranges[name]
  const message = carried('problem.event.number', rangeSaid(name))
  return v.pipe(
    v.number(message),
    v.check((value) => value >= least && value <= most && (name !== 'sheet' || Number.isInteger(value)), message),
  )
}

const eventSchema = v.strictObject({
  kind: v.picklist(kinds, carried('problem.event.kind', { allowed: kinds.join(', ') })),
  sheet: number('sheet'),
  ink: v.exactOptional(v.string(carried('problem.event.name'))),
  tack: v.exactOptional(number('tack')),
  film: v.exactOptional(number('film')),
  temperature: v.exactOptional(number('temperature')),
  dampening: v.exactOptional(number('dampening')),
})

const eventsSchema = v.pipe(
  v.array(eventSchema, carried('problem.event.list')),
  v.maxLength(mostEvents, carried('problem.event.tooMany', { most: mostEvents })),
)

/**
 * Checks a list such as [{ "kind": "wash-up", "sheet": 5000, "ink": "yellow" }]; an "ink change" states what becomes of
 * the ink: tack, film, temperature, dampening. Returns the events in order of their sheets. Never throws.
 */
export function checkEvents(input: unknown, setUp: SetUp): { events: RunEvent[] } | { problems: Problem[] } {
  const result = v.safeParse(eventsSchema, input)
  if (!result.success) {
    return {
      problems: result.issues.map(({ path = [], message }) => {
        const at = pathOf([{ key: 'events' }, ...path])
        return message.startsWith('Invalid') ? problem(at, 'problem.event.field') : problemFrom(at, message)
      }),
    }
  }
  const problems: Problem[] = []
  const events = result.output.map((given, index): RunEvent => {
    const { kind, sheet, ink, ...changed } = given
    if (kind === 'stop') return { kind, sheet }
    const unit = setUp.inks.findIndex(({ name }) => name === ink)
    const names = setUp.inks.map(({ name }) => name).join(', ')
    if (unit < 0) problems.push(problem(`events[${index}].ink`, 'problem.event.ink', { allowed: names }))
    if (kind === 'wash-up') return { kind, sheet, unit }
    if (Object.keys(changed).length === 0) {
      problems.push(problem(`events[${index}]`, 'problem.event.nothing'))
    }
    return { kind, sheet, unit, ink: changed }
  })
  return problems.length > 0 ? { problems } : { events: events.sort((a, b) => a.sheet - b.sheet) }
}
