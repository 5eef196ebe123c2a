import { spawn } from 'node:child_process'
import { root } from './places.mjs'
import { say } from './say.mjs'

const grave = new Set(['high', 'critical'])
const patienceMilliseconds = 60_000

/**
 * @typedef {{ name: string, severity: string, what: string }} Finding
 * @typedef {{ kind: 'notHad', why: string } | { kind: 'notUnderstood', why: string }
 *   | { kind: 'had', grave: Finding[], others: number }} AuditAnswer
 */

/**
 * What `npm audit --json` answered.
 *
 * @param {string} text
 * @returns {AuditAnswer} notHad: npm itself says that nobody answered.
 */
export function readAudit(text) {
  let report
  try {
    report = JSON.parse(text)
  } catch {
    return text.trim() === ''
      ? { kind: 'notHad', why: 'npm said nothing' }
      : { kind: 'notUnderstood', why: 'it is not JSON' }
  }
  const { auditReportVersion, vulnerabilities, message, error } = report ?? {}
  if (auditReportVersion === undefined && (message || error)) {
    return { kind: 'notHad', why: withoutAddress(String(message || error.summary || error.code)) }
  }
  if (auditReportVersion !== 2 || typeof vulnerabilities !== 'object' || vulnerabilities === null) {
    return { kind: 'notUnderstood', why: `it is of the form ${auditReportVersion}, not 2` }
  }
  const findings = Object.values(vulnerabilities).map(({ name, severity, via }) => ({
    name,
    severity,
    what: via.map((cause) => (typeof cause === 'string' ? `by ${cause}` : cause.title)).join('; '),
  }))
  const bad = findings.filter(({ severity }) => grave.has(severity))
  return { kind: 'had', grave: bad, others: findings.length - bad.length }
}

/** Where it was asked is nobody's business in a log. */
function withoutAddress(sentence) {
  return sentence.replaceAll(/https?:\/\/\S+/g, 'the registry')
}

/**
 * Whether the packages that the pages run with have grave faults that are known. Where nobody answers it does not
 * count: not every machine may ask.
 *
 * @returns {Promise<{ passed: number, failed: number }>}
 */
export async function auditPackages() {
  const answer = readAudit(await askNpm())
  if (answer.kind === 'notHad') {
    say(`Known faults of packages could not be asked for (${answer.why}): not counted.`)
    return { passed: 0, failed: 0 }
  }
  if (answer.kind === 'notUnderstood') {
    say(`What npm audit says is not understood: ${answer.why}.`)
    return { passed: 0, failed: 1 }
  }
  for (const { name, severity, what } of answer.grave) say(`${name}: ${severity}: ${what}`)
  say(`${answer.grave.length} packages with grave faults that are known, ${answer.others} with lesser ones.`)
  return answer.grave.length === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: answer.grave.length }
}

/** @returns {Promise<string>} */
function askNpm() {
  const options = ['audit', '--omit=dev', '--json', '--fetch-retries=0', '--fetch-timeout=20000']
  return new Promise((resolve) => {
    const npm = spawn('npm', options, {
      cwd: root,
      shell: process.platform === 'win32',
      stdio: ['ignore', 'pipe', 'ignore'],
      timeout: patienceMilliseconds,
    })
    let text = ''
    npm.stdout.on('data', (piece) => (text += piece))
    npm.once('error', () => resolve(''))
    npm.once('close', () => resolve(text))
  })
}
