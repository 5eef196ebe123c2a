import { withClient } from './connect.mjs'
import { inProject } from './places.mjs'
import { runQuietly } from './run-quietly.mjs'

/**
 * Whether the database holds no club at all, whatever row-level security would show the owner of it.
 *
 * @param {{ ownerUrl: string }} database
 */
export function hasNoClub({ ownerUrl }) {
  return withClient({ url: ownerUrl, name: 'DATABASE_URL' }, async (client) => {
    await client.query('begin')
    try {
      const { rows } = await client.query(`select row_security_active('"Club"') as "isFiltered"`)
      if (rows[0].isFiltered) {
        // The owner is bound like everybody; it lifts that for one question and takes it back by rolling back.
        await client.query("set local lock_timeout = '10s'")
        await client.query('alter table "Club" no force row level security')
      }
      const found = await client.query('select from "Club" limit 1')
      return found.rowCount === 0
    } finally {
      await client.query('rollback')
    }
  })
}

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
