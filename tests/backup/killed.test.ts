import { spawn } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { basename, dirname } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { beforeAll, describe, expect, it } from 'vitest'
import { lookIntoBackup } from '#cli/backup/look-into-backup'
import { rebuildSquad } from '#server/rebuild'
import { recordBook, richBook } from '../support/random-book'
import { seededRandom } from '../support/seeded-random'
import { aClub, ownerDatabase } from '../support/test-club'
import { testDatabase } from '../support/test-database'
import { backUp, hashesOf, newFile, passphrase } from '../support/whole-book'

const project = fileURLToPath(new URL('../..', import.meta.url))
const { ownerUrl } = testDatabase()
let file: string
let old: Readonly<Record<string, string>>

beforeAll(async () => {
  for (const seed of [11, 12, 13]) {
    const club = await aClub({ players: 0 })
    await recordBook(club, richBook(seed))
    await club.run((tx) => rebuildSquad(tx, { squadId: club.squadId }))
  }
  file = await backUp(ownerUrl)
  old = await hashesOf(ownerUrl)
}, 60_000)

/** Kills with SIGKILL once a step was said and so many milliseconds more are over. What it said by then. */
async function killed(
  words: readonly string[],
  { after, ms }: { readonly after: string; readonly ms: number },
): Promise<string> {
  const script = ['--import', 'tsx', '--conditions=react-server', 'tests/support/backup-child.ts']
  const child = spawn(process.execPath, [...script, ...words, ownerUrl, passphrase], { cwd: project })
  let said = ''
  const ended = new Promise((resolve) => child.once('close', resolve))
  const isSaid = new Promise<void>((resolve) => {
    for (const stream of [child.stdout, child.stderr])
      stream.on('data', (text) => {
        said += text
        if (said.includes(after)) resolve()
      })
  })
  await Promise.race([isSaid, ended])
  await setTimeout(ms)
  child.kill('SIGKILL')
  await ended
  return said
}

describe('kill -9', () => {
  it.each([
    ['table 1 of', 0],
    ['table 1 of', 30],
    ['reading it back', 5],
  ])(
    'in the middle of a backup, after "%s" and %i ms, leaves the old file, and the next one tidies up',
    async (after, ms) => {
      const target = newFile()
      await backUp(ownerUrl, target)
      const before = readFileSync(target)
      const said = await killed(['backup', target], { after, ms })
      expect(said).toContain(after)
      const { rows } = await lookIntoBackup(target, { passphrase })
      expect(rows).toBeGreaterThan(1000)
      if (!said.includes('done')) expect(readFileSync(target).equals(before)).toBe(true)
      await backUp(ownerUrl, target)
      const beside = readdirSync(dirname(target)).filter((name) => name.startsWith(`${basename(target)}.`))
      expect(beside).toEqual([])
    },
    30_000,
  )

  it('in the middle of a restore, at any moment, leaves the old book or the new one', async () => {
    await ownerDatabase().$executeRawUnsafe(`update "Player" set name = 'Since changed'`)
    const now = await hashesOf(ownerUrl)
    expect(now.Player).not.toBe(old.Player)
    const random = seededRandom(5)
    const moments = [
      { after: 'putting the rows back', ms: 0 },
      { after: 'putting the rows back', ms: random.whole(10, 120) },
      { after: 'holding what is there', ms: random.whole(0, 60) },
      { after: 'done', ms: 0 },
    ]
    for (const moment of moments) {
      const said = await killed(['restore', file], moment)
      expect(said).toContain(moment.after)
      const left = await hashesOf(ownerUrl)
      expect([now, old]).toContainEqual(left)
      if (said.includes('done')) expect(left).toEqual(old)
    }
    // Nothing that it held is held still.
    expect(await hashesOf(ownerUrl)).toEqual(old)
    expect(existsSync(file)).toBe(true)
  }, 60_000)
})
