/**
 * A test that was passed over proves nothing, so it counts as failed; so does a file that broke before its first
 * test, and a program that failed while every test it reports passed.
 */

/** @param {{ numPassedTests: number, numTotalTests: number, testResults: { status: string, assertionResults: unknown[] }[] } | null} report */
export function vitestCounts(report, exitCode) {
  if (!report) return { passed: 0, failed: 1 }
  const brokenFiles = report.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
  ).length
  return counts(
    { passed: report.numPassedTests, failed: report.numTotalTests - report.numPassedTests + brokenFiles },
    exitCode,
  )
}

/** @param {{ stats: { expected: number, unexpected: number, flaky: number, skipped: number }, errors: unknown[] } | null} report */
export function playwrightCounts(report, exitCode) {
  if (!report) return { passed: 0, failed: 1 }
  const { expected, unexpected, flaky, skipped } = report.stats
  return counts({ passed: expected, failed: unexpected + flaky + skipped + report.errors.length }, exitCode)
}

function counts({ passed, failed }, exitCode) {
  const hasHiddenFailure = failed === 0 && (exitCode !== 0 || passed === 0)
  return { passed, failed: hasHiddenFailure ? 1 : failed }
}
