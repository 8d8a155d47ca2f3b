/** All that a file may hold, drawn from what is legal. */
import fc from 'fast-check'
import { emptyShelf } from '../../src/measure/shelf.ts'
import type { Saved } from '../../src/session/saved.ts'
import { scenePictures, sceneReadings } from '../../src/session/scene.ts'
import { anySetUp, anyView } from './any-linked.ts'

const shown = anySetUp.chain((setUp) => anyView(setUp.inks.length).map((view) => ({ setUp, view })))
const text = fc.string({ unit: 'binary', maxLength: 60 })
const short = fc.string({ unit: 'binary', maxLength: 30 })
const sceneShown = fc.record(
  {
    picture: fc.constantFrom(...scenePictures),
    number: fc.record({ of: fc.constantFrom(...sceneReadings), ink: short, below: short }, { requiredKeys: ['of'] }),
    plays: fc.boolean(),
    waits: fc.boolean(),
    question: text,
    caption: text,
    beside: fc.record({ setUp: anySetUp, caption: text }),
  },
  { requiredKeys: [] },
)
export const anySaved: fc.Arbitrary<Saved> = fc.record({
  setUp: fc.option(anySetUp),
  view: anyView(4),
  scenes: fc.array(
    fc.tuple(shown, text, text, sceneShown).map(([scene, name, note, how]) => ({ ...scene, name, note, ...how })),
    { maxLength: 3 },
  ),
  trials: fc.array(
    fc.record({
      name: text,
      note: text,
      setUp: anySetUp,
      readings: fc.array(fc.record({ patch: text, red: text, sheet: text }, { requiredKeys: [] }), { maxLength: 3 }),
    }),
    { maxLength: 3 },
  ),
  readings: fc.array(fc.record({ patch: text, green: text, blue: text }, { requiredKeys: [] }), { maxLength: 3 }),
  readingsFile: fc.option(fc.record({ name: text, text })),
  shelf: anySetUp.map(({ inks }) => ({ ...emptyShelf, inks })),
  progress: fc.constant([{ lesson: 'tack', step: 'first', records: { first: { done: true, misses: 2, hints: 0 } } }]),
  settings: fc.record(
    {
      theme: fc.constantFrom('auto' as const, 'high contrast' as const),
      measures: fc.constant(['m/min', 'degF'] as const),
      motion: fc.constantFrom('reduced' as const, 'full' as const),
      sound: fc.boolean(),
      language: fc.constantFrom('en', 'es'),
    },
    { requiredKeys: [] },
  ),
})
