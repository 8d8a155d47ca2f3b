/** A set-up within a lesson: the bench's own checker reads it, and its problems become problems of the lesson. */
import * as v from 'valibot'
import { checkSetUp } from '../press/check-setup.ts'
import { carry, said } from '../press/problem.ts'
import type { SetUp } from '../press/setup.ts'

export const setUpSchema = v.pipe(
  v.unknown(),
  v.rawTransform<unknown, SetUp>(({ dataset, addIssue, NEVER }) => {
    const checked = checkSetUp(dataset.value)
    if ('setUp' in checked) return checked.setUp
    for (const { path, said: problem } of checked.problems) {
      const keys = keysOf(path)
      addIssue({
        message: carry(keys.length > 0 ? said('checker.inSetUp', { place: path, problem }) : problem),
        ...(keys.length > 0 ? { path: places(keys, dataset.value) } : {}),
      })
    }
    return NEVER
  }),
)

/** inks[2].tack as its keys */
function keysOf(path: string): (string | number)[] {
  return path
    .split(/[.[\]]+/)
    .filter(Boolean)
    .map((key) => (/^\d+$/.test(key) ? Number(key) : key))
}

function places(keys: (string | number)[], input: unknown): [v.IssuePathItem, ...v.IssuePathItem[]] {
  return keys.map((key) => ({ type: 'unknown', origin: 'value', input, key, value: undefined })) as [
    v.IssuePathItem,
    ...v.IssuePathItem[],
  ]
}
