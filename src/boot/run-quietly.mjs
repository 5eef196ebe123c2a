import { spawn } from 'node:child_process'
import { root } from './places.mjs'
import { Refusal } from './refusal.mjs'

const shownLines = 30

/**
 * Runs a program to its end and keeps its output to itself, unless the program fails.
 *
 * @param {string} program
 * @param {readonly string[]} options
 * @param {{ env?: NodeJS.ProcessEnv, signal?: AbortSignal, failure: string, shell?: boolean }} how
 *   failure: the sentence that a failure opens with.
 * @returns {Promise<string>} what it wrote
 */
export function runQuietly(program, options, { env = process.env, signal, failure, shell = false }) {
  signal?.throwIfAborted()
  return new Promise((resolve, reject) => {
    // Its own group, so that stopping it stops also what it started.
    const child = spawn(program, options, {
      cwd: root,
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
