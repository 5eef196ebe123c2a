import { spawn } from 'node:child_process'
import { get } from 'node:http'
import { join } from 'node:path'
import { inProject, root } from './places.mjs'
import { waitUntil } from './processes.mjs'
import { Refusal } from './refusal.mjs'
import { RotatingLog } from './rotating-log.mjs'

const readyMilliseconds = 60_000
/** Long enough for what is being sent to arrive, and for the answer. */
const stopMilliseconds = 10_000
const faultLevel = 50

/**
 * Serves the built pages and waits until they answer.
 *
 * @param {{ port: number, host: string, env: NodeJS.ProcessEnv, folder: string, signal?: AbortSignal }} wish
 *   folder: where the log goes.
 * @returns {Promise<{ pid: number, gone: Promise<void>, stop: () => Promise<void> }>}
 */
export async function servePages({ port, host, env, folder, signal }) {
  const log = new RotatingLog(join(folder, 'pages.log'))
  const behindDoor = new URL('./serve-behind-door.mjs', import.meta.url).href
  const next = inProject('node_modules/next/dist/bin/next')
  const options = ['--import', behindDoor, next, 'start', '--port', String(port), '--hostname', host]
  const child = spawn(process.execPath, options, {
    cwd: root,
    env,
    // Its own group: Ctrl+C reaches us alone, and we stop it before the database.
    detached: true,
    stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
  })
  log.take(child.stdout)
  log.take(child.stderr, (line) => isFault(line) && process.stderr.write(line))
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
  const isReady = async () => hasEnded || signal?.aborted || (await isReadyAt({ port, host }))
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

/** What whoever started it should see at once: faults, and what is no line of the log at all. @param {string} line */
function isFault(line) {
  try {
    return JSON.parse(line).level >= faultLevel
  } catch {
    return true
  }
}

/** Whether the pages say that they can serve: see src/app/api/ready. */
function isReadyAt({ port, host }) {
  const name = host === '0.0.0.0' || host === '::' ? 'localhost' : host
  return new Promise((resolve) => {
    // Without an agent no connection is kept open: one would make the pages wait for it when they stop.
    const headers = { host: 'localhost' }
    const request = get(
      { port, host: name, path: '/api/ready', headers, agent: false, timeout: 10_000 },
      (response) => {
        response.resume()
        resolve(response.statusCode === 200)
      },
    )
    request.once('timeout', () => request.destroy())
    request.once('error', () => resolve(false))
  })
}
