import { spawnSync } from 'node:child_process'
import { startThrowAwayPostgres, templateDatabase } from './throw-away-postgres.mjs'

// Speed is told as ratios to a named peer in the same run; nothing here passes or fails.
const server = await startThrowAwayPostgres()
try {
  const env = {
    ...process.env,
    BENCH_DATABASE_URL: server.ownerUrl(templateDatabase),
    BENCH_APP_URL: server.appUrl(templateDatabase),
  }
  const tsx = ['--import', 'tsx', '--conditions=react-server']
  process.exitCode =
    spawnSync(process.execPath, [...tsx, 'tests/bench/run.ts', ...process.argv.slice(2)], {
      stdio: 'inherit',
      env,
    }).status ?? 1
} finally {
  await server.stop()
}
