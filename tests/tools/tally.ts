/** How many tests of a stage passed and failed. */
export interface Tally {
  passed: number
  failed: number
}

/** The part of vitest's JSON report that is read here. */
export interface UnitReport {
  numPassedTests: number
  numTotalTests: number
}

/** The part of Playwright's JSON report that is read here. */
export interface BrowserReport {
  stats: { expected: number; unexpected: number; flaky: number; skipped: number }
}

/** A check that is no test counts as one. */
export function tallyCheck(ended: boolean): Tally {
  return ended ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 }
}

/** A skipped test counts as failed, and so does a run of no test or one that ended badly with every test passed. */
export function tallyUnit(report: UnitReport, ended: boolean): Tally {
  return atLeastOneFailed(report.numPassedTests, report.numTotalTests - report.numPassedTests, ended)
}

/** As for the unit tests; a test that passed only when tried again counts as failed too. */
export function tallyBrowser({ stats }: BrowserReport, ended: boolean): Tally {
  return atLeastOneFailed(stats.expected, stats.unexpected + stats.flaky + stats.skipped, ended)
}

function atLeastOneFailed(passed: number, failed: number, ended: boolean): Tally {
  const ranNone = passed + failed === 0
  return { passed, failed: failed === 0 && (ranNone || !ended) ? 1 : failed }
}
