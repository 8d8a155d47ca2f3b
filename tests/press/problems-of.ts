/** What the checker of files says of a set-up. */
import type { Problem } from '../../src/press/problem.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import type { SetUp } from '../../src/press/setup.ts'

export function problemsOf({
  press: { kind, speed, interval, temperature, dampening, waterless },
  ...rest
}: SetUp): Problem[] {
  const checked = checkSetUp({ ...rest, press: { kind, speed, interval, temperature, dampening, waterless } })
  return 'problems' in checked ? checked.problems : []
}
