import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { randomSeason } from '../support/random-season'
import { runTurnbook } from '../support/run-turnbook'
import { smallSeason } from '../support/small-season'

const root = fileURLToPath(new URL('../../', import.meta.url))

/** The command as people run it, in a process of its own. */
function npmTurnbook(words: readonly string[], input: string) {
  const { status, stdout, stderr } = spawnSync('npm', ['run', '--silent', 'turnbook', '--', ...words], {
    cwd: root,
    input,
    encoding: 'utf8',
  })
  return { exitCode: status, output: stdout, errors: stderr }
}

describe('npm run turnbook', { timeout: 30_000 }, () => {
  it('writes the ledger of a season and ends with 0', async () => {
    const season = JSON.stringify(randomSeason(7, { players: 16, practices: 30, turns: 24, matches: 10 }))
    const result = npmTurnbook(['ledger'], season)
    expect(result).toEqual(await runTurnbook(['ledger'], season))
    expect(result.exitCode).toBe(0)
  })

  it('ends with 2, lines on standard error and nothing written where the season is wrong', () => {
    const folder = mkdtempSync(join(tmpdir(), 'turnbook-'))
    const out = join(folder, 'ledger.json')
    const season = smallSeason()
    Object.assign(season.practices[0]?.turns[1] as object, { start: 344, surprise: 1 })
    season.players.push({ id: 'p1' })
    const result = npmTurnbook(['ledger', '--out', out], JSON.stringify(season))
    expect(result.exitCode).toBe(2)
    expect(result.output).toBe('')
    expect(
      result.errors
        .trimEnd()
        .split('\n')
        .map((line) => line.split(': ')[0]),
    ).toEqual(['players[4].id', 'practices[0].turns[1].surprise'])
    expect(existsSync(out)).toBe(false)
    rmSync(folder, { recursive: true })
  })

  it('ends with 2 for a verb it does not have', () => {
    expect(npmTurnbook(['nonsense'], '')).toMatchObject({ exitCode: 2, output: '' })
  })
})
