import { benchLedger } from './ledger-bench'
import { benchTable } from './table'

const url = process.env.BENCH_DATABASE_URL
if (!url) throw new Error('BENCH_DATABASE_URL must be set to a database that may be written to')
process.stdout.write(`${benchTable(await benchLedger(url))}\n`)
