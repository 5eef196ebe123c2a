import { spawn } from 'node:child_process'
import { closeSync, openSync } from 'node:fs'
import { get } from 'node:http'
import { join } from 'node:path'
import { inProject, root } from './places.mjs'
import { waitUntil } from './processes.mjs'
import { Refusal } from './refusal.mjs'

const readyMilliseconds = 60_000
const stopMilliseconds = 6_000

/**
 * Serves the built pages and waits until they answer.
 *
 * @param {{ port: number, host: string, env: NodeJS.ProcessEnv, folder: string, signal?: AbortSignal }} wish
 *   folder: where the log goes.
 * @returns {Promise<{ pid: number, gone: Promise<void>, stop: () => Promise<void> }>}
 */
export async function servePages({ port, host, env, folder, signal }) {
  const log = openSync(join(folder, 'pages.log'), 'a', 0o600)
  const watch = new URL('./end-with-parent.mjs', import.meta.url).href
  const next = inProject('node_modules/next/dist/bin/next')
  const options = ['--import', watch, next, 'start', '--port', String(port), '--hostname', host]
  const child = spawn(process.execPath, options, {
    cwd: root,
    env,
    // Its own group: Ctrl+C reaches us alone, and we stop it before the database.
    detached: true,
    stdio: ['ignore', log, 'inherit', 'ipc'],
  })
  closeSync(log)
  let hasEnded = false
  const gone = new Promise((resolve) => {
    const end = () => {
      hasEnded = true
      resolve(undefined)
    }
    child.once('exit', end)
    child.once('error', end)
  })
  const stop = async () => {
    if (hasEnded) return
    child.kill('SIGTERM')
    if (!(await waitUntil(() => hasEnded, stopMilliseconds))) child.kill('SIGKILL')
    await gone
  }
  const isReady = async () => hasEnded || signal?.aborted || (await answers({ port, host }))
  const answered = await waitUntil(isReady, readyMilliseconds)
  if (hasEnded || signal?.aborted || !answered) {
    await stop()
    signal?.throwIfAborted()
    throw new Refusal(
      `The pages could not be served on port ${port}. What was said is above and in ${join(folder, 'pages.log')}.`,
    )
  }
  return { pid: child.pid, gone, stop }
}

/** Whether anything at all answers there. */
function answers({ port, host }) {
  const name = host === '0.0.0.0' || host === '::' ? 'localhost' : host
  return new Promise((resolve) => {
    // Without an agent no connection is kept open: one would make the pages wait for it when they stop.
    const request = get({ port, host: name, path: '/', agent: false, timeout: 10_000 }, (response) => {
      response.resume()
      resolve(true)
    })
    request.once('timeout', () => request.destroy())
    request.once('error', () => resolve(false))
  })
}
