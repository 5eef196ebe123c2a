import { spawn } from 'node:child_process'
import { root } from './places.mjs'
import { Refusal } from './refusal.mjs'

const shownLines = 30

/**
 * Runs a program to its end and keeps its output to itself, unless the program fails.
 *
 * @param {string} program
 * @param {readonly string[]} options
 * @param {object} how
 * @param {string} how.failure the sentence that a failure opens with
 * @param {NodeJS.ProcessEnv} [how.env]
 * @param {AbortSignal} [how.signal]
 * @param {boolean} [how.shell]
 * @param {string} [how.cwd]
 * @param {{ uid: number, gid: number } | null} [how.account] who it runs as; null: we
 * @returns {Promise<string>} what it wrote
 */
export function runQuietly(
  program,
  options,
  { failure, env, signal, shell = false, cwd = root, account = null },
) {
  signal?.throwIfAborted()
  return new Promise((resolve, reject) => {
    // Its own group: Ctrl+C reaches us alone, and stopping it stops also what it started.
    const child = spawn(program, options, {
      ...account,
      cwd,
      env,
      shell,
      detached: true,
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    let output = ''
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (text) => (output += text))
    const stop = () => {
      try {
        process.kill(-(child.pid ?? Number.NaN), 'SIGTERM')
      } catch {
        child.kill('SIGTERM')
      }
    }
    signal?.addEventListener('abort', stop, { once: true })
    child.once('error', reject)
    child.once('close', (code) => {
      signal?.removeEventListener('abort', stop)
      if (signal?.aborted) reject(signal.reason)
      else if (code === 0) resolve(output)
      else reject(new Refusal(`${failure}\n${output.trimEnd().split('\n').slice(-shownLines).join('\n')}`))
    })
  })
}
