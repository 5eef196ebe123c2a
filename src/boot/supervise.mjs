import { join } from 'node:path'
import { prepareCheckout, preparePages } from './checkout.mjs'
import { prepareDataFolder } from './data-folder.mjs'
import { writeFlagRegistry } from './flag-registry.mjs'
import { keepServing } from './keep-serving.mjs'
import { lastBackupSentence } from './last-backup.mjs'
import { takeLock } from './lock.mjs'
import { checkOwnAddress } from './own-address.mjs'
import { servePages } from './pages.mjs'
import { isDemo, networkAddresses, pagesAddress, pagesEnvironment, pagesPort } from './pages-settings.mjs'
import { dataFolder } from './places.mjs'
import { Refusal } from './refusal.mjs'
import { say, step } from './say.mjs'
import { readSecrets } from './secrets.mjs'
import { makeSetUpCode } from './set-up-code.mjs'
import { listenForStop } from './stop-request.mjs'

/**
 * Prepares everything, serves, and keeps it serving until asked to stop.
 *
 * @returns {Promise<number>} the exit code: 0 stopped as asked, 1 could not go on, 3 already running.
 */
export async function supervise() {
  const request = listenForStop()
  /** What to undo at the end, in the order it was done. @type {(() => unknown)[]} */
  const endings = []
  let isServing = false
  try {
    const running = await prepare({ endings, signal: request.signal })
    isServing = true
    await keepServing(running, request)
    return 0
  } catch (error) {
    if (request.signal.aborted) return isServing ? 0 : 1
    if (!(error instanceof Refusal)) throw error
    console.error(error.message)
    return error.exitCode
  } finally {
    if (request.signal.aborted) say(isServing ? 'Stopping.' : 'Stopped before it was ready.')
    for (const undo of endings.reverse()) await undo()
  }
}

async function prepare({ endings, signal }) {
  const { env } = process
  checkOwnAddress(env)
  const folder = dataFolder(env)
  prepareDataFolder(folder)
  const lock = lockOf(folder)
  endings.push(() => lock.release())
  const place = await pagesPort(env)
  await prepareCheckout({ signal })
  const secrets = readSecrets(folder)
  const running = await prepareDatabase({ folder, secrets, env, signal, endings })
  writeFlagRegistry()
  await preparePages({ signal })
  const { appUrl } = running
  const { cookieSecret } = secrets
  const setUp = isDemo(env) || running.hasClub ? null : makeSetUpCode()
  const setUpHash = setUp?.hash ?? null
  const pagesEnv = pagesEnvironment({ env, appUrl, cookieSecret, dataFolder: folder, setUpHash })
  const serve = () => servePages({ ...place, env: pagesEnv, folder, signal })
  running.serve = serve
  running.pages = await step('starting the pages', serve)
  endings.push(() => running.pages.stop())
  lock.setAddress(pagesAddress(place))
  announce({ place, env, folder, setUp })
  return running
}

function lockOf(folder) {
  const lock = takeLock(join(folder, 'lock.json'))
  if (lock.holder === null) return lock
  const { pid, address } = lock.holder
  const state = address ? `running at ${address}` : 'starting'
  throw new Refusal(`Turnbook is already ${state} (process ${pid}), with the data in ${folder}.`, {
    exitCode: 3,
  })
}

/** These parts need the packages, so they are loaded only after the packages are there. */
async function prepareDatabase({ folder, secrets, env, signal, endings }) {
  const { openDatabase, prepareTables } = await import('./database.mjs')
  const { loadDemo } = await import('./demo.mjs')
  const { refuseToMix, whatStands } = await import('./what-stands.mjs')
  const database = await openDatabase({ folder, secrets, env, signal })
  const { server, restart, appUrl } = database
  const running = { database: server, restartDatabase: restart, appUrl, hasClub: false }
  endings.push(() => running.database?.stop())
  await step('bringing the tables up to date', () => prepareTables(database, { ...secrets, folder }))
  const stands = await whatStands(database)
  refuseToMix(stands, env)
  if (isDemo(env) && !stands.hasDemo) {
    await step('loading the demo club', () => loadDemo(database, { env, signal }))
  }
  signal.throwIfAborted()
  running.hasClub = stands.hasClub
  return running
}

function announce({ place, env, folder, setUp }) {
  if (place.isSecondChoice) say(`Port 3000 is taken by another program, so this is port ${place.port}.`)
  say(`Turnbook is ready: ${pagesAddress(place)}`)
  for (const address of networkAddresses(place)) say(`On other machines of this network: ${address}`)
  if (isDemo(env)) say('Demo sign-ins, chosen on the first page: head coach, coach, parent.')
  else if (setUp) announceSetUp(env.TURNBOOK_URL || pagesAddress(place), setUp)
  else say(lastBackupSentence(folder, new Date()))
  say('Ctrl+C stops it.')
}

function announceSetUp(address, { code }) {
  say('No club stands here yet. To make yours, open this page and write the code into it; it works once:')
  say(`  ${new URL('/set-up', address).href}`)
  say(`  ${code}`)
}
