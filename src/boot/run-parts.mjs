import { prepareCheckout } from './checkout.mjs'
import { Refusal } from './refusal.mjs'
import { say } from './say.mjs'
import { parts } from './test-parts.mjs'

/**
 * Runs the named parts of the tests.
 *
 * @param {readonly string[]} names none: every part
 * @returns {Promise<number>} the exit code
 */
export async function runNamedParts(names) {
  const unknown = names.filter((name) => !(name in parts))
  if (unknown.length > 0) {
    console.error(
      `There is no part named ${unknown.join(', ')}. There are: ${Object.keys(parts).join(', ')}.`,
    )
    return 1
  }
  const chosen = Object.entries(parts).filter(([name]) => names.length === 0 || names.includes(name))
  return runParts(chosen.map(([, part]) => part))
}

/**
 * Runs parts one after the other, all of them whatever the first ones say, and ends with one line that counts them.
 *
 * @param {readonly import('./test-parts.mjs').Part[]} chosen
 * @returns {Promise<number>} the exit code
 */
export async function runParts(chosen) {
  const total = { passed: 0, failed: 0 }
  const lines = []
  const isPrepared = await holds(() => prepareCheckout({}))
  if (!isPrepared) total.failed += 1
  for (const { title, run } of isPrepared ? chosen : []) {
    say(`\n── ${title} ──`)
    const start = Date.now()
    let counts = { passed: 0, failed: 1 }
    await holds(async () => {
      counts = await run()
    })
    total.passed += counts.passed
    total.failed += counts.failed
    const seconds = ((Date.now() - start) / 1000).toFixed(1)
    const mark = counts.failed === 0 ? '✓' : '✗'
    lines.push(`${mark} ${title}: ${counts.passed} passed, ${counts.failed} failed, ${seconds} s`)
  }
  say(`\n${lines.join('\n')}\n\n${total.passed} passed, ${total.failed} failed`)
  return total.failed === 0 ? 0 : 1
}

async function holds(work) {
  try {
    await work()
    return true
  } catch (error) {
    console.error(error instanceof Refusal ? error.message : error)
    return false
  }
}
