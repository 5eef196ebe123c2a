import { Refusal } from './refusal.mjs'
import { say } from './say.mjs'

const minuteMilliseconds = 60_000
const restartsAMinute = 5

/**
 * @typedef {{ gone: Promise<void>, stop: () => Promise<void> }} Server
 * @typedef {object} Running
 * @property {Server} pages
 * @property {() => Promise<Server>} serve starts the pages again
 * @property {Server | null} database null: somebody else runs it
 * @property {(() => Promise<Server>) | null} restartDatabase
 */

/**
 * Starts again what ends by itself, until asked to stop.
 *
 * @param {Running} running its servers are replaced as they are started again
 * @param {{ signal: AbortSignal, asked: Promise<void> }} request
 * @throws {Refusal} when something ends over and over.
 */
export async function keepServing(running, { signal, asked }) {
  let restarts = []
  for (;;) {
    const ended = await Promise.race([
      asked,
      running.pages.gone.then(() => 'pages'),
      ...(running.database ? [running.database.gone.then(() => 'database')] : []),
    ])
    if (signal.aborted) return
    restarts = [...restarts.filter((time) => time > Date.now() - minuteMilliseconds), Date.now()]
    const name = ended === 'database' ? 'The database' : 'The server of the pages'
    if (restarts.length > restartsAMinute) throw new Refusal(`${name} ends over and over. Giving up.`)
    say(`${name} ended by itself: starting it again.`)
    if (ended === 'database' && running.restartDatabase) running.database = await running.restartDatabase()
    else running.pages = await running.serve()
    say(`${name} is back.`)
  }
}
