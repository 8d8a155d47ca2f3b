import { describe, expect, it } from 'vitest'
import { checkEvents } from '../../src/press/check-events.ts'
import { checkSetUp } from './legal-setups.ts'

const setUp = checkSetUp([16, 14, 12, 10])
const problemsOf = (input: unknown) => {
  const checked = checkEvents(input, setUp)
  return 'problems' in checked ? checked.problems.map(({ path, message }) => `${path}: ${message}`) : []
}

describe('the events of a run', () => {
  it('are read by the names of inks and put in order', () => {
    expect(
      checkEvents(
        [
          { kind: 'ink change', sheet: 900, ink: 'yellow', tack: 9, film: 5 },
          { kind: 'wash-up', sheet: 500, ink: 'cyan' },
          { kind: 'stop', sheet: 100 },
        ],
        setUp,
      ),
    ).toEqual({
      events: [
        { kind: 'stop', sheet: 100 },
        { kind: 'wash-up', sheet: 500, unit: 1 },
        { kind: 'ink change', sheet: 900, unit: 3, ink: { tack: 9, film: 5 } },
      ],
    })
    expect(checkEvents([], setUp)).toEqual({ events: [] })
  })

  it('are refused in words', () => {
    expect(problemsOf('stop')).toEqual(['events: is not allowed; allowed is a list of events'])
    expect(problemsOf([{ kind: 'halt', sheet: 1 }])).toEqual([
      'events[0].kind: is no event; allowed are stop, wash-up, ink change',
    ])
    expect(problemsOf([{ kind: 'stop', sheet: 0.5 }])).toEqual([
      expect.stringMatching(/^events\[0\]\.sheet: .*1 to 100000/),
    ])
    expect(problemsOf([{ kind: 'wash-up', sheet: 5, ink: 'red' }])).toEqual([
      'events[0].ink: is no loaded ink; loaded are black, cyan, magenta, yellow',
    ])
    expect(problemsOf([{ kind: 'ink change', sheet: 5, ink: 'cyan' }])).toEqual([
      expect.stringMatching(/changes nothing/),
    ])
    expect(problemsOf([{ kind: 'ink change', sheet: 5, ink: 'cyan', tack: 99 }])).toEqual([
      expect.stringMatching(/2 to 40/),
    ])
    expect(problemsOf([{ kind: 'stop', sheet: 5, units: 3 }])).toEqual([expect.stringMatching(/^events\[0\]\.units: /)])
    expect(problemsOf([{ sheet: 5 }])).toEqual([expect.stringMatching(/^events\[0\]\.kind: /)])
  })
})
