import { benchLedger } from './ledger-bench'
import { benchPages } from './pages-bench'
import { benchRotations } from './rotation-bench'
import { benchTable } from './table'

const { BENCH_DATABASE_URL: owner, BENCH_APP_URL: app } = process.env
if (!owner || !app)
  throw new Error('BENCH_DATABASE_URL and BENCH_APP_URL must name a database that may be written to')
const measured = [...(await benchLedger(owner)), ...(await benchPages({ owner, app }))]
process.stdout.write(`${benchTable(measured)}\n\n`)
process.stdout.write(`${await benchRotations({ isFull: process.argv.includes('--full') })}\n`)
