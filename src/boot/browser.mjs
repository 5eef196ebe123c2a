import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { Refusal } from './refusal.mjs'
import { runQuietly } from './run-quietly.mjs'
import { step } from './say.mjs'

const commands = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome']
const applications = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
]

/**
 * A Chromium on this machine: the one that CHROMIUM names, an installed one, or one that comes as a package.
 *
 * @returns {Promise<string | null>} its program
 * @throws {Refusal} when CHROMIUM names nothing.
 */
export async function findBrowser() {
  const { CHROMIUM, PATH = '' } = process.env
  if (CHROMIUM) {
    if (existsSync(CHROMIUM)) return CHROMIUM
    throw new Refusal(`CHROMIUM is "${CHROMIUM}", and there is no such program.`)
  }
  const folders = PATH.split(delimiter)
  const places = [...commands.flatMap((name) => folders.map((folder) => join(folder, name))), ...applications]
  return places.find((place) => existsSync(place)) ?? packagedBrowser()
}

async function packagedBrowser() {
  // Not among our packages: taken when somebody has put it there.
  const name = '@sparticuz/chromium'
  try {
    // Makes it bring the libraries that a bare machine lacks.
    process.env.AWS_EXECUTION_ENV ??= 'AWS_Lambda_nodejs22.x'
    process.env.AWS_LAMBDA_JS_RUNTIME ??= 'nodejs22.x'
    const { default: chromium } = await import(name)
    return await chromium.executablePath()
  } catch (error) {
    if (error.code === 'ERR_MODULE_NOT_FOUND') return null
    throw error
  }
}

/**
 * A Chromium, installed with the system's own packages when there is none and we may.
 *
 * @returns {Promise<string>} its program
 * @throws {Refusal} when there is none to be had: tests in a browser are never passed over.
 */
export async function ensureBrowser() {
  const found = await findBrowser()
  if (found) return found
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    await step('installing a browser', installChromium)
    const installed = await findBrowser()
    if (installed) return installed
  }
  throw new Refusal(
    'No Chromium was found for the tests in a browser. Install one, or set CHROMIUM to its program.',
  )
}

async function installChromium() {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  const failure = 'The browser could not be installed:'
  await runQuietly('apt-get', ['update'], { env, failure })
  const wanted = ['chromium', 'fonts-dejavu-core']
  await runQuietly('apt-get', ['install', '-y', '--no-install-recommends', ...wanted], { env, failure })
}
