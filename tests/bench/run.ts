import { readFileSync, writeFileSync } from 'node:fs'
import { benchAhead } from './ahead-bench'
import { benchBackup } from './backup-bench'
import { benchLedger } from './ledger-bench'
import { benchLineUps } from './line-up-bench'
import { benchPages } from './pages-bench'
import { benchReplan } from './replan-bench'
import { benchReplanMatch } from './replan-match-bench'
import { benchRotations } from './rotation-bench'
import { benchTable } from './table'

const { BENCH_DATABASE_URL: owner, BENCH_APP_URL: app } = process.env
if (!owner || !app)
  throw new Error('BENCH_DATABASE_URL and BENCH_APP_URL must name a database that may be written to')

const started = performance.now()
const say = (line: string) =>
  process.stderr.write(`${((performance.now() - started) / 1000).toFixed(0).padStart(4)} s  ${line}\n`)

say('ledger of a season')
const ledger = await benchLedger(owner)
const pages = await benchPages({ owner, app }, say)
say('a backup')
const table = benchTable([...ledger, ...pages, ...(await benchBackup(owner, say))])
process.stdout.write(`${table}\n`)
if (process.argv.includes('--write')) writeTable(table)
const isFull = process.argv.includes('--full')
say('new plans')
process.stdout.write(`\n${benchReplan({ isFull })}\n`)
process.stdout.write(`\n${benchReplanMatch({ isFull })}\n`)
say('line-ups')
process.stdout.write(`\n${await benchLineUps({ isFull, say })}\n`)
say('weeks ahead')
process.stdout.write(`\n${await benchAhead({ isFull, say })}\n`)
say('rotations')
// `--minutes=30` ends the rotations' part after about so long, with as many as were done by then.
const minutes = Number(process.argv.find((own) => own.startsWith('--minutes='))?.slice('--minutes='.length))
const rotations = await benchRotations({
  isFull,
  budgetMs: minutes > 0 ? minutes * 60_000 : Number.POSITIVE_INFINITY,
  say,
})
process.stdout.write(`\n${rotations}\n`)

/** Puts the table between its marks in the README. */
function writeTable(table: string): void {
  const readme = readFileSync('README.md', 'utf8')
  const marked = /(<!-- bench -->\n)[\s\S]*(<!-- \/bench -->)/
  if (!marked.test(readme)) throw new Error('README.md has no marks for the table.')
  writeFileSync(
    'README.md',
    readme.replace(marked, (_, open, close) => `${open}${table}\n${close}`),
  )
}
