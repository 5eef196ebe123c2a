import { networkInterfaces } from 'node:os'
import { tryPort } from './ports.mjs'
import { Refusal } from './refusal.mjs'

const firstPort = 3000
const triedPorts = 20

/**
 * Where the pages are to be served: PORT, or the first free port from 3000 on; on this machine only, unless
 * TURNBOOK_HOST names another of its addresses.
 *
 * @param {NodeJS.ProcessEnv} env
 * @returns {Promise<{ port: number, host: string, isSecondChoice: boolean }>}
 * @throws {Refusal}
 */
export async function pagesPort({ PORT, TURNBOOK_HOST }) {
  const host = TURNBOOK_HOST || '127.0.0.1'
  if (!PORT) return firstFreePort(host)
  const port = Number(PORT)
  if (!Number.isInteger(port) || port < 1 || port > 65_535) {
    throw new Refusal(`PORT is "${PORT}"; it should be a whole number from 1 to 65535.`)
  }
  if ((await tryOn({ port, host })) === null) {
    throw new Refusal(`Port ${port} is taken by another program. Set PORT to a free one, or leave it out.`)
  }
  return { port, host, isSecondChoice: false }
}

async function firstFreePort(host) {
  for (let port = firstPort; port < firstPort + triedPorts; port++) {
    if ((await tryOn({ port, host })) !== null) return { port, host, isSecondChoice: port !== firstPort }
  }
  throw new Refusal(
    `Ports ${firstPort} to ${firstPort + triedPorts - 1} are all taken. Set PORT to a free one.`,
  )
}

async function tryOn({ port, host }) {
  try {
    return await tryPort(port, host)
  } catch (error) {
    if (error.code === 'EACCES')
      throw new Refusal(`Port ${port} is not for everybody. Set PORT to 1024 or above.`)
    if (error.code === 'EADDRNOTAVAIL' || error.code === 'ENOTFOUND') {
      throw new Refusal(`TURNBOOK_HOST is "${host}", which is no address of this machine.`)
    }
    throw error
  }
}

/**
 * What the pages are told. The owner's address is kept from them: they work as a role that owns nothing. The data folder
 * is told whole, since they run elsewhere than whoever started them.
 *
 * @param {{ env: NodeJS.ProcessEnv, appUrl: string, cookieSecret: string, dataFolder: string, setUpHash: string | null }} given
 *   setUpHash: of the code of the set-up page; null when it is closed
 * @returns {NodeJS.ProcessEnv}
 */
export function pagesEnvironment({ env, appUrl, cookieSecret, dataFolder, setUpHash }) {
  const { DATABASE_URL: _owner, PORT: _port, TURNBOOK_SET_UP: _setUp, ...rest } = env
  return {
    ...rest,
    NODE_ENV: 'production',
    NEXT_TELEMETRY_DISABLED: '1',
    DATABASE_APP_URL: appUrl,
    TURNBOOK_SECRET: cookieSecret,
    TURNBOOK_DATA: dataFolder,
    TURNBOOK_DEMO: isDemo(env) ? '1' : '0',
    ...(setUpHash ? { TURNBOOK_SET_UP: setUpHash } : {}),
  }
}

/** @param {{ readonly TURNBOOK_DEMO?: string }} env */
export const isDemo = (env) => env.TURNBOOK_DEMO !== '0'

const isEverywhere = (host) => host === '0.0.0.0' || host === '::'

/** What to type into a browser on this machine. @param {{ port: number, host: string }} at */
export function pagesAddress({ port, host }) {
  const isHere = isEverywhere(host) || host === '127.0.0.1' || host === '::1'
  return `http://${isHere ? 'localhost' : host.includes(':') ? `[${host}]` : host}:${port}`
}

/** What to type on other machines of the network; empty when they cannot reach us. @param {{ port: number, host: string }} at */
export function networkAddresses({ port, host }) {
  if (!isEverywhere(host)) return []
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => `http://${address}:${port}`)
}
