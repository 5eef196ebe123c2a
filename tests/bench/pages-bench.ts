import pg from 'pg'
import type { Viewer } from '#access/viewer'
import { closeAppDatabase, closeDatabase, openDatabase } from '#data/database'
import { inClub } from '#data/in-club'
import { listSquads } from '#data/squads'
import { loadSeasonBook } from '#server/book-views'
import { loadReview } from '#server/review-views'
import { loadDemoClub } from '../../seeds/load-demo-club'
import { recordSql, replaySql } from './bare-sql'
import { copySquads } from './copy-squads'
import { demoHeadCoach } from './demo-viewer'
import { fillToSquads } from './fill-squads'
import { benchLoad } from './load-bench'
import { type Measured, medianPair } from './measure'
import { type ServedPages, startPages } from './served-pages'

type Bench = { readonly viewer: Viewer; readonly app: pg.Client; readonly pages: ServedPages }

/** Views and whole pages with more and more squads in the database, against the view's own SQL sent bare. */
export async function benchPages(
  addresses: { readonly owner: string; readonly app: string },
  say: (line: string) => void,
): Promise<readonly Measured[]> {
  process.env.DATABASE_APP_URL = addresses.app
  const database = openDatabase(addresses.owner, { connections: 1 })
  await loadDemoClub(database, say)
  await closeDatabase(database)
  const owner = new pg.Client({ connectionString: addresses.owner })
  const app = new pg.Client({ connectionString: addresses.app })
  await owner.connect()
  await app.connect()
  const pages = await startPages()
  try {
    const viewer = await demoHeadCoach()
    const bench = { viewer, app, pages }
    say('200 people at once')
    const measured: Measured[] = [...(await benchLoad(pages.address))]
    for (const squads of [2, 100, 10_000]) {
      say(`${squads.toLocaleString('en-GB')} squads`)
      await fillToSquads(owner, viewer.clubId, squads)
      measured.push(...(await benchBook(bench, `${squads.toLocaleString('en-GB')} squads in the database`)))
    }
    say('a review of 40 squads')
    await copySquads(owner, viewer.clubId, 19)
    return [...measured, ...(await benchReview(bench))]
  } finally {
    await pages.stop()
    await closeAppDatabase()
    await app.end()
    await owner.end()
  }
}

async function benchBook(bench: Bench, withSquads: string): Promise<readonly Measured[]> {
  const [squad] = await inClub(bench.viewer.clubId, (tx) => listSquads(tx))
  if (!squad) throw new Error('The demo club has no squad.')
  return benchPage(bench, {
    load: () => loadSeasonBook(bench.viewer, { squadId: squad.id, query: {} }),
    path: `/squads/${squad.id}/book`,
    what: `season book, ${withSquads}`,
    runs: 31,
  })
}

function benchReview(bench: Bench): Promise<readonly Measured[]> {
  const load = async () => {
    const review = await loadReview(bench.viewer, { query: {} })
    if (review.squads.length !== 40) throw new Error(`The review has ${review.squads.length} squads.`)
  }
  return benchPage(bench, { load, path: '/review', what: 'term review of 40 squads', runs: 11 })
}

type Page = {
  readonly load: () => Promise<unknown>
  readonly path: string
  readonly what: string
  readonly runs: number
}

async function benchPage(
  { viewer, app, pages }: Bench,
  { load, path, what, runs }: Page,
): Promise<readonly Measured[]> {
  await load()
  const statements = await recordSql(load)
  const bare = () => replaySql(app, statements)
  const peer = `its ${statements.length} statements sent bare`
  const view = await medianPair(runs, { ours: load, peer: bare })
  const whole = await medianPair(runs, { ours: () => pages.fetchPage(viewer, path), peer: bare })
  return [
    { what: `${what}: query to view`, peer, runs, ...view },
    { what: `${what}: the whole page`, peer, runs, ...whole },
  ]
}
