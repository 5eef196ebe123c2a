import pg from 'pg'
import type { Viewer } from '#access/viewer'
import { closeAppDatabase, closeDatabase, openDatabase } from '#data/database'
import { inClub } from '#data/in-club'
import { listSquads } from '#data/squads'
import { loadSeasonBook } from '#server/book-views'
import { loadDemoClub } from '../../seeds/load-demo-club'
import { recordSql, replaySql } from './bare-sql'
import { demoHeadCoach } from './demo-viewer'
import { fillToSquads } from './fill-squads'
import { type Measured, medianPair } from './measure'

const runs = 31

/** The season book's view, query to view, with more and more squads in the database, against its own SQL sent bare. */
export async function benchPages(addresses: { owner: string; app: string }): Promise<readonly Measured[]> {
  process.env.DATABASE_APP_URL = addresses.app
  const database = openDatabase(addresses.owner, { connections: 1 })
  await loadDemoClub(database, () => {})
  await closeDatabase(database)
  const owner = new pg.Client({ connectionString: addresses.owner })
  const app = new pg.Client({ connectionString: addresses.app })
  await owner.connect()
  await app.connect()
  try {
    const viewer = await demoHeadCoach()
    const measured: Measured[] = []
    for (const squads of [2, 100, 10_000]) {
      await fillToSquads(owner, viewer.clubId, squads)
      measured.push(await benchBook(viewer, app, squads))
    }
    return measured
  } finally {
    await closeAppDatabase()
    await app.end()
    await owner.end()
  }
}

async function benchBook(viewer: Viewer, app: pg.Client, squads: number): Promise<Measured> {
  const [squad] = await inClub(viewer.clubId, (tx) => listSquads(tx))
  if (!squad) throw new Error('The demo club has no squad.')
  const load = () => loadSeasonBook(viewer, { squadId: squad.id, query: {} })
  await load()
  const statements = await recordSql(load)
  const pair = await medianPair(runs, { ours: load, peer: () => replaySql(app, statements) })
  return {
    what: `season book, query to view, ${squads.toLocaleString('en-GB')} squads in the database`,
    peer: `its ${statements.length} statements sent bare`,
    runs,
    ...pair,
  }
}
