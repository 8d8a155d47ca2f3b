/**
 * Data of unknown origin as JSON text: legal data with values missing, exchanged, of the wrong type, huge, nested deep,
 * under other names, or beside names that every object inherits.
 */
import fc from 'fast-check'
import { oddTexts } from './spoil-text.ts'

/** Stand-ins for what cannot be built as data, or not without touching a prototype; they become text only. */
const standIns: readonly (readonly [standIn: string, text: string])[] = [
  ['"@deep list"', `${'['.repeat(20_000)}${']'.repeat(20_000)}`],
  ['"@deep object"', `${'{"a":'.repeat(20_000)}1${'}'.repeat(20_000)}`],
  ['"@wide list"', `[${'0,'.repeat(50_000)}0]`],
  ['"@wide object"', `{${Array.from({ length: 5000 }, (_, n) => `"k${n}":0`).join()}}`],
  ['"@long text"', `"${'x'.repeat(300_000)}"`],
  ['"@infinity"', '1e999'],
  ['"@proto"', '"__proto__"'],
]

const oddValue: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...oddTexts) },
  {
    weight: 4,
    arbitrary: fc.constantFrom(
      null,
      true,
      false,
      0,
      -1,
      1,
      2,
      3,
      0.5,
      1e21,
      -1e308,
      5e-324,
      2 ** 53,
      [],
      {},
      [[]],
      [null],
    ),
  },
  { weight: 1, arbitrary: fc.constantFrom(...standIns.slice(0, -1).map(([standIn]) => JSON.parse(standIn) as string)) },
  {
    weight: 1,
    arbitrary: fc.constant({ '@proto': { polluted: true }, constructor: { prototype: { polluted: true } } }),
  },
  { weight: 2, arbitrary: fc.jsonValue({ maxDepth: 2 }) },
)

const oddKey = fc.oneof(
  fc.constantFrom(
    '@proto',
    'constructor',
    'prototype',
    'toString',
    '__defineGetter__',
    'then',
    'length',
    'version',
    '0',
    '',
  ),
  fc.string({ maxLength: 8 }),
)

interface Edit {
  at: number
  how: 'drop' | 'replace' | 'rename' | 'add' | 'repeat' | 'wrap' | 'exchange'
  value: unknown
  key: string
}

export const treeEdits: fc.Arbitrary<Edit[]> = fc.array(
  fc.record({
    at: fc.nat(1_000_000),
    how: fc.constantFrom('replace', 'replace', 'replace', 'drop', 'rename', 'add', 'repeat', 'wrap', 'exchange'),
    value: oddValue,
    key: oddKey,
  }),
  { minLength: 1, maxLength: 4 },
)

type Holder = Record<string, unknown> | unknown[]
interface Slot {
  holder: Holder
  key: string
}

/** Every place of the tree, the root held in a list of one. */
function slotsIn(holder: Holder, slots: Slot[] = []): Slot[] {
  for (const key of Object.keys(holder)) {
    slots.push({ holder, key })
    const value = (holder as Record<string, unknown>)[key]
    if (typeof value === 'object' && value !== null) slotsIn(value as Holder, slots)
  }
  return slots
}

/** The data as JSON text, edited. */
export function spoiltTree(data: unknown, edits: readonly Edit[]): string {
  const root = [JSON.parse(JSON.stringify(data)) as unknown]
  for (const each of edits) {
    const slots = slotsIn(root)
    if (slots.length > 0) change(slots, each)
  }
  return standIns.reduce((text, [standIn, by]) => text.replaceAll(standIn, by), JSON.stringify(root[0] ?? null))
}

function change(slots: readonly Slot[], { at, how, value, key: name }: Edit): void {
  const { holder, key } = slots[at % slots.length]
  const values = holder as Record<string, unknown>
  const own = JSON.parse(JSON.stringify(value)) as unknown
  const inside = values[key]
  switch (how) {
    case 'replace':
      return void (values[key] = own)
    case 'drop':
      if (Array.isArray(holder)) holder.splice(Number(key), 1)
      else Reflect.deleteProperty(values, key)
      return
    case 'rename':
      if (Array.isArray(holder)) return
      Reflect.deleteProperty(values, key)
      put(values, name, inside)
      return
    case 'add':
      if (typeof inside === 'object' && inside !== null && !Array.isArray(inside)) {
        put(inside as Record<string, unknown>, name, own)
      } else if (Array.isArray(inside)) inside.push(own)
      return
    case 'repeat':
      // Not so often that a large part becomes larger than anything that is read.
      if (Array.isArray(inside))
        inside.push(
          ...Array.from(
            { length: 40 },
            () => JSON.parse(JSON.stringify(inside.at(at % (inside.length || 1)) ?? null)) as unknown,
          ),
        )
      return
    case 'wrap':
      return void (values[key] = at % 2 === 0 ? [inside] : { [key]: inside })
    case 'exchange':
      return void (values[key] = JSON.parse(JSON.stringify(valueAt(slots[(at * 7 + 3) % slots.length]) ?? null)))
  }
}

function valueAt({ holder, key }: Slot): unknown {
  return (holder as Record<string, unknown>)[key]
}

/** As own property, whatever the name. */
function put(into: Record<string, unknown>, key: string, value: unknown): void {
  Object.defineProperty(into, key, { value, enumerable: true, configurable: true, writable: true })
}
