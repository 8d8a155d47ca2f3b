/**
 * Reads an object field by field, so that one bad field does not take the others with it: each that cannot be read is
 * named and left out, and so is each that is not known.
 */
import * as v from 'valibot'
import { nearestTo } from '../lesson/field.ts'
import type { Problem } from '../press/problem.ts'
import { given, problem, problemFrom } from '../press/problem.ts'

/** Reads one field from anything at all; undefined, and the reason told, where it cannot be. */
export type ReadField<Value> = (input: unknown, path: string, problems: Problem[]) => Value | undefined

type Readers = Readonly<Record<string, ReadField<unknown>>>
type Read<Fields extends Readers> = { [Field in keyof Fields]?: NonNullable<ReturnType<Fields[Field]>> }

export function fieldsOf<Fields extends Readers>(what: string, readers: Fields): ReadField<Read<Fields>> {
  const known = Object.keys(readers)
  const allowed = known.join(', ')
  return (input, path, problems) => {
    if (typeof input !== 'object' || input === null || Array.isArray(input)) {
      problems.push(problem(path, 'problem.file.object', { given: given(input), what, allowed }))
      return undefined
    }
    const fields = Object.entries(input).flatMap(([field, value]: [string, unknown]) => {
      if (known.includes(field)) {
        const result = readers[field](value, join(path, field), problems)
        return result === undefined ? [] : [[field, result] as const]
      }
      const near = nearestTo(field, known) ?? 'none'
      const at = join(path, field.slice(0, longestShown))
      problems.push(problem(at, 'problem.file.field', { given: given(field), what, allowed, near }))
      return []
    })
    return Object.fromEntries(fields) as Read<Fields>
  }
}

/** Characters of an unknown field's name that are told. */
const longestShown = 60

/** A field whose schema says in words what is wrong. */
export function bySchema<Value>(schema: v.GenericSchema<unknown, Value>): ReadField<Value> {
  return (input, path, problems) => {
    const result = v.safeParse(schema, input)
    if (result.success) return result.output
    problems.push(...result.issues.map(({ path: at, message }) => problemFrom(pathOf(path, at), message)))
    return undefined
  }
}

/** A list; items that cannot be read are left out, those beyond `most` too. */
export function listOf<Item>(what: string, most: number, read: ReadField<Item>): ReadField<Item[]> {
  return (input, path, problems) => {
    if (!Array.isArray(input)) {
      problems.push(problem(path, 'problem.file.list', { given: given(input), what }))
      return undefined
    }
    if (input.length > most) {
      problems.push(problem(path, 'problem.file.tooMany', { count: input.length, what, most }))
    }
    return input.slice(0, most).flatMap((item: unknown, index) => read(item, `${path}[${index}]`, problems) ?? [])
  }
}

function join(path: string, field: string): string {
  return path === '' ? field : `${path}.${field}`
}

function pathOf(path: string, at: readonly { key: unknown }[] | undefined): string {
  return (at ?? []).reduce<string>(
    (whole, { key }) => (typeof key === 'number' ? `${whole}[${key}]` : join(whole, String(key))),
    path,
  )
}
