import { prepareCheckout } from './checkout.mjs'
import { Refusal } from './refusal.mjs'
import { say } from './say.mjs'
import { parts } from './test-parts.mjs'

/**
 * Runs parts of the tests one after the other, all of them whatever the first ones say, and ends with one line that
 * counts them.
 *
 * @param {readonly string[]} names none: every part
 * @returns {Promise<number>} the exit code
 */
export async function runParts(names) {
  const unknown = names.filter((name) => !(name in parts))
  if (unknown.length > 0) {
    console.error(
      `There is no part named ${unknown.join(', ')}. There are: ${Object.keys(parts).join(', ')}.`,
    )
    return 1
  }
  const chosen = Object.keys(parts).filter((name) => names.length === 0 || names.includes(name))
  const total = { passed: 0, failed: 0 }
  const lines = []
  const isPrepared = await holds(() => prepareCheckout({}))
  if (!isPrepared) total.failed += 1
  for (const name of isPrepared ? chosen : []) {
    const { title, run } = parts[name]
    say(`\n── ${title} (${name}) ──`)
    const start = Date.now()
    let counts = { passed: 0, failed: 1 }
    await holds(async () => {
      counts = await run()
    })
    total.passed += counts.passed
    total.failed += counts.failed
    const seconds = ((Date.now() - start) / 1000).toFixed(1)
    lines.push(
      `${counts.failed === 0 ? '✓' : '✗'} ${title}: ${counts.passed} passed, ${counts.failed} failed, ${seconds} s`,
    )
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
