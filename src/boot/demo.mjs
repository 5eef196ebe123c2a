import { inProject } from './places.mjs'
import { runQuietly } from './run-quietly.mjs'

/**
 * Fills an empty database with the demo club.
 *
 * @param {{ ownerUrl: string, appUrl: string }} database
 * @param {{ env: NodeJS.ProcessEnv, signal?: AbortSignal }} how
 */
export async function loadDemo({ ownerUrl, appUrl }, { env, signal }) {
  const tsx = inProject('node_modules/tsx/dist/cli.mjs')
  const script = inProject('seeds/load-demo.ts')
  await runQuietly(process.execPath, [tsx, '--conditions=react-server', script], {
    env: { ...env, DATABASE_URL: ownerUrl, DATABASE_APP_URL: appUrl },
    signal,
    failure: 'The demo club could not be loaded:',
  })
}
