import { describe, expect, it } from 'vitest'
import { playwrightCounts, vitestCounts } from '../../src/boot/test-counts.mjs'

describe('counting the tests of vitest', () => {
  const goodFile = { status: 'passed', assertionResults: [{}, {}] }
  const report = { numPassedTests: 2, numTotalTests: 2, testResults: [goodFile] }

  it.each([
    ['all passed', report, 0, { passed: 2, failed: 0 }],
    ['one failed, one passed over', { ...report, numTotalTests: 4 }, 1, { passed: 2, failed: 2 }],
    [
      'a file broke before its first test',
      { ...report, testResults: [goodFile, { status: 'failed', assertionResults: [] }] },
      1,
      { passed: 2, failed: 1 },
    ],
    ['it failed although every test passed', report, 1, { passed: 2, failed: 1 }],
    [
      'there was no test',
      { numPassedTests: 0, numTotalTests: 0, testResults: [] },
      0,
      { passed: 0, failed: 1 },
    ],
    ['it wrote no report', null, 0, { passed: 0, failed: 1 }],
  ])('%s', (_, given, exitCode, counts) => {
    expect(vitestCounts(given, exitCode)).toEqual(counts)
  })
})

describe('counting the tests in a browser', () => {
  const stats = { expected: 3, unexpected: 0, flaky: 0, skipped: 0 }

  it.each([
    ['all passed', { stats, errors: [] }, 0, { passed: 3, failed: 0 }],
    [
      'failed, passed at the second try, passed over',
      { stats: { expected: 3, unexpected: 1, flaky: 1, skipped: 1 }, errors: [] },
      1,
      { passed: 3, failed: 3 },
    ],
    [
      'the server did not start',
      { stats: { ...stats, expected: 0 }, errors: [{}] },
      1,
      { passed: 0, failed: 1 },
    ],
    ['it wrote no report', null, 1, { passed: 0, failed: 1 }],
  ])('%s', (_, given, exitCode, counts) => {
    expect(playwrightCounts(given, exitCode)).toEqual(counts)
  })
})
