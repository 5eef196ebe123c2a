import { inProject } from './places.mjs'
import { runQuietly } from './run-quietly.mjs'
import { hashOf, readStamp, writeStamp } from './stamp.mjs'

const stampFile = inProject('node_modules/.turnbook-packages')

const wantedStamp = () => `${hashOf(['package-lock.json'])} ${process.platform}-${process.arch}`

export const packagesAreStale = () => readStamp(stampFile) !== wantedStamp()

/** Installs exactly the packages of package-lock.json. @param {{ signal?: AbortSignal }} how */
export async function installPackages({ signal }) {
  const { npm_execpath: npmProgram, ...env } = process.env
  // The build and the tests need the development packages too, whatever NODE_ENV says.
  const options = ['ci', '--include=dev', '--include=optional', '--no-audit', '--no-fund']
  const failure = 'The packages could not be installed. The first time this needs the network; npm says:'
  if (npmProgram?.endsWith('.js'))
    await runQuietly(process.execPath, [npmProgram, ...options], { env, signal, failure })
  else await runQuietly('npm', options, { env, signal, failure, shell: process.platform === 'win32' })
  writeStamp(stampFile, wantedStamp())
}
