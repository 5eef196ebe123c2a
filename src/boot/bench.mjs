import { spawnSync } from 'node:child_process'
import { randomBytes } from 'node:crypto'
import { prepareCheckout, preparePages } from './checkout.mjs'

// Speed is told as ratios to a named peer in the same run; nothing here passes or fails.
await prepareCheckout({})
await preparePages({})
const { startThrowAwayPostgres, templateDatabase } = await import('./throw-away-postgres.mjs')
const server = await startThrowAwayPostgres()
try {
  const env = {
    ...process.env,
    BENCH_DATABASE_URL: server.ownerUrl(templateDatabase),
    BENCH_APP_URL: server.appUrl(templateDatabase),
    TURNBOOK_DEMO: '1',
    TURNBOOK_SECRET: randomBytes(32).toString('hex'),
  }
  const tsx = ['--import', 'tsx', '--conditions=react-server']
  const options = { stdio: 'inherit', env }
  process.exitCode =
    spawnSync(process.execPath, [...tsx, 'tests/bench/run.ts', ...process.argv.slice(2)], options).status ?? 1
} finally {
  await server.stop()
}
