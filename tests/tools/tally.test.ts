import { expect, test } from 'vitest'
import { tallyBrowser, tallyCheck, tallyUnit } from './tally.ts'

const allWell = { stats: { expected: 3, unexpected: 0, flaky: 0, skipped: 0 } }

test('a check counts as one', () => {
  expect(tallyCheck(true)).toEqual({ passed: 1, failed: 0 })
  expect(tallyCheck(false)).toEqual({ passed: 0, failed: 1 })
})

test('tests are counted one by one', () => {
  expect(tallyUnit({ numPassedTests: 7, numTotalTests: 9 }, false)).toEqual({ passed: 7, failed: 2 })
  expect(tallyBrowser(allWell, true)).toEqual({ passed: 3, failed: 0 })
  expect(tallyBrowser({ stats: { ...allWell.stats, unexpected: 2 } }, false)).toEqual({ passed: 3, failed: 2 })
})

test('a run of no test has failed', () => {
  expect(tallyUnit({ numPassedTests: 0, numTotalTests: 0 }, true)).toEqual({ passed: 0, failed: 1 })
  expect(tallyBrowser({ stats: { expected: 0, unexpected: 0, flaky: 0, skipped: 0 } }, true)).toEqual({
    passed: 0,
    failed: 1,
  })
})

test('a run that ended badly has failed even where every test passed', () => {
  expect(tallyUnit({ numPassedTests: 7, numTotalTests: 7 }, false)).toEqual({ passed: 7, failed: 1 })
  expect(tallyBrowser(allWell, false)).toEqual({ passed: 3, failed: 1 })
})

test('a skipped test and one that passed only at a second try have failed', () => {
  expect(tallyUnit({ numPassedTests: 7, numTotalTests: 8 }, true)).toEqual({ passed: 7, failed: 1 })
  expect(tallyBrowser({ stats: { ...allWell.stats, skipped: 1, flaky: 1 } }, true)).toEqual({ passed: 3, failed: 2 })
})
