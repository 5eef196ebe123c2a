import { spawnSync } from 'node:child_process'
import pg from 'pg'
import { readSeasonLog } from '#exchange/season-log'
import { type SeasonLedger, seasonLedger } from '#fairness/season-ledger'
import { fullSeason } from './full-season'
import { ledgerSql, loadSeason } from './ledger-sql'
import { type Measured, medianMs, medianPair } from './measure'

type SqlRow = {
  player: string
  role: string
  situation: string | null
  theme: string | null
  fair: number
  got: number
}

/** A season's ledger against the same sums written as one SQL query, and the whole command with its start. */
export async function benchLedger(databaseUrl: string): Promise<readonly Measured[]> {
  const size = { players: 16, practices: 100, turns: 24 }
  const season = fullSeason(size)
  const log = readSeasonLog(season)
  if (!log.ok) throw new Error(JSON.stringify(log.reasons.slice(0, 3)))
  const client = new pg.Client({ connectionString: databaseUrl })
  await client.connect()
  try {
    await loadSeason(client, season)
    expectSameSums(seasonLedger(log.value), (await client.query<SqlRow>(ledgerSql)).rows)
    const text = JSON.stringify(season)
    const runs = 11
    const peer = 'the same sums as one SQL query'
    const pair = await medianPair(runs, {
      ours: () => seasonLedger(log.value),
      peer: () => client.query(ledgerSql),
    })
    const commandMs = await medianMs(5, () => runCommand(text))
    const what = `${size.players} players × ${size.practices} practices × ${size.turns} turns`
    return [
      { what: `ledger of a season, ${what}`, peer, runs, ...pair },
      {
        what: 'the command from start to output, same season',
        ms: commandMs,
        peer,
        peerMs: pair.peerMs,
        runs: 5,
      },
    ]
  } finally {
    await client.end()
  }
}

function runCommand(input: string): void {
  const done = spawnSync('npm', ['run', '--silent', 'turnbook', '--', 'ledger'], {
    input,
    maxBuffer: 2 ** 28,
  })
  if (done.status !== 0) throw new Error(done.stderr.toString())
}

/** Two ways that disagree are not worth a race. */
function expectSameSums(ledger: SeasonLedger, rows: readonly SqlRow[]): void {
  for (const player of ledger.players) {
    for (const [role, balance] of Object.entries(player.practiceRoles)) {
      const own = rows.filter((row) => row.player === player.playerId && row.role === role)
      const fair = own.reduce((sum, row) => sum + row.fair, 0)
      const got = own.reduce((sum, row) => sum + row.got, 0)
      if (Math.abs(fair - balance.fairSeconds) > 1e-3 || got !== balance.seconds) {
        throw new Error(
          `${player.playerId} ${role}: ${got} of ${fair} in SQL, ${balance.seconds} of ${balance.fairSeconds} here`,
        )
      }
    }
  }
}
