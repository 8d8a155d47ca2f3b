import { expect, test } from 'vitest'
import { checkLicences } from './licence-rules.ts'

const collected = (...licences: (string | undefined)[]) =>
  licences
    .map((licence, at) => `## part-${at} - 1.0.${at}${licence === undefined ? '' : ` (${licence})`}\n\nText.\n`)
    .join('\n')

test.each(['MIT', 'ISC', 'BSD-3-Clause', 'Apache-2.0', '(MIT OR GPL-3.0-only)', 'MIT AND ISC'])(
  '%s may be shipped',
  (licence) => {
    expect(checkLicences(collected('MIT', licence))).toEqual({ parts: 2, problems: [] })
  },
)

test.each([
  'GPL-3.0-only',
  'AGPL-3.0-or-later',
  'LGPL-2.1',
  'MPL-2.0',
  'MIT AND GPL-2.0-only',
  'CC-BY-SA-4.0',
  'SEE LICENSE IN FILE',
  'UNLICENSED',
  undefined,
])('%s may not', (licence) => {
  const { parts, problems } = checkLicences(collected('MIT', licence))
  expect(parts).toBe(2)
  expect(problems).toHaveLength(1)
  expect(problems[0]).toMatch(/^part-1 1\.0\.1 (is under|names (a|no) licence)/)
})

test('a bundle that collects none is no clean one', () => {
  expect(checkLicences('# Licenses\n').problems).toHaveLength(1)
})
