import { describe, expect, it } from 'vitest'
import { readAudit } from '../../src/boot/audit.mjs'

/** The form of npm 7 and later, `auditReportVersion` 2; keys from memory of npm's own reports. */
function report(vulnerabilities: object, version = 2): string {
  return JSON.stringify({ auditReportVersion: version, vulnerabilities, metadata: {} })
}

const fault = (name: string, severity: string, via: readonly unknown[]) => ({
  [name]: {
    name,
    severity,
    isDirect: false,
    via,
    effects: [],
    range: '<2.0.0',
    nodes: [],
    fixAvailable: true,
  },
})

describe('what npm audit says', () => {
  it('is good where nothing is known, and where only lesser faults are', () => {
    expect(readAudit(report({}))).toEqual({ kind: 'had', grave: [], others: 0 })
    const lesser = { ...fault('small', 'low', []), ...fault('middling', 'moderate', []) }
    expect(readAudit(report(lesser))).toEqual({ kind: 'had', grave: [], others: 2 })
  })

  it('is bad with grave faults, each by its name and cause', () => {
    const found = readAudit(
      report({
        ...fault('deep', 'critical', [
          { source: 1, name: 'deep', title: 'Runs what it is sent', severity: 'critical' },
        ]),
        ...fault('above', 'high', ['deep']),
        ...fault('small', 'low', []),
      }),
    )
    expect(found).toEqual({
      kind: 'had',
      grave: [
        { name: 'deep', severity: 'critical', what: 'Runs what it is sent' },
        { name: 'above', severity: 'high', what: 'by deep' },
      ],
      others: 1,
    })
  })

  it.each([
    // As npm 11 printed it where the registry takes no questions.
    [
      '405 Method Not Allowed - POST https://packages.example/-/npm/v1/x',
      '405 Method Not Allowed - POST the registry',
    ],
    [
      'request to https://packages.example/x failed, reason: ENOTFOUND',
      'request to the registry failed, reason: ENOTFOUND',
    ],
  ])('does not count where nobody answered: %s', (message, why) => {
    const text = JSON.stringify({ message, statusCode: 405, error: { summary: '', detail: '' } })
    expect(readAudit(text)).toEqual({ kind: 'notHad', why })
    expect(readAudit('')).toMatchObject({ kind: 'notHad' })
  })

  it('is never passed over for being in a form that is not known', () => {
    for (const text of ['<html>', report({}, 3), '{}', '[]', 'null', '{"auditReportVersion":2}'])
      expect(readAudit(text)).toMatchObject({ kind: 'notUnderstood' })
  })
})
