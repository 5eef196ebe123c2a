import { readFileSync, writeFileSync } from 'node:fs'
import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { lookIntoBackup } from '#cli/backup/look-into-backup'
import { seal } from '#cli/backup/seal'
import { BackupFault } from '#exchange/backup/backup-fault'
import { runTurnbook } from '../support/run-turnbook'
import { aClub, ownerDatabase } from '../support/test-club'
import { testDatabase } from '../support/test-database'
import { backUp, hashesOf, newFile, passphrase, plainOf, workFactor } from '../support/whole-book'

const { ownerUrl } = testDatabase()
let file: string
let whole: Buffer
let plain: string

beforeAll(async () => {
  await aClub({ name: 'Kestrel Heath' })
  file = await backUp(ownerUrl)
  whole = readFileSync(file)
  plain = plainOf(file)
}, 60_000)

function fileOf(bytes: Uint8Array): string {
  const changed = newFile()
  writeFileSync(changed, bytes)
  return changed
}

/** A backup whose text is changed before it is sealed: by somebody who knows the passphrase, or a newer program. */
async function sealed(text: string): Promise<string> {
  const pieces: Uint8Array[] = []
  const source = (async function* () {
    yield Buffer.from(text)
  })()
  for await (const piece of await seal(source, { passphrase, workFactor })) pieces.push(piece)
  return fileOf(Buffer.concat(pieces))
}

/** As people do it, with a passphrase; what was there must be there afterwards, to the last row. */
async function refusalOf(path: string, words = passphrase): Promise<string> {
  process.env.TURNBOOK_PASSPHRASE = words
  const before = await hashesOf(ownerUrl)
  const { exitCode, errors } = await runTurnbook(['restore', path, '--yes'])
  delete process.env.TURNBOOK_PASSPHRASE
  expect([exitCode, await hashesOf(ownerUrl)]).toEqual([2, before])
  return errors.trimEnd().split('\n').at(-1) ?? ''
}

describe('a restore', () => {
  it.each([
    [
      'another passphrase',
      () => refusalOf(file, 'five words and a hedge'),
      'does not open with this passphrase',
    ],
    ['a file cut short', () => refusalOf(fileOf(whole.subarray(0, -100))), 'is damaged'],
    [
      'a file cut in its first line',
      () => refusalOf(fileOf(whole.subarray(0, 10))),
      'was not made by turnbook backup',
    ],
    ['an empty file', () => refusalOf(fileOf(Buffer.alloc(0))), 'was not made by turnbook backup'],
    [
      'another kind of file',
      () => refusalOf(fileOf(Buffer.from('name,day\n'))),
      'was not made by turnbook backup',
    ],
    [
      'a sealed file of something else',
      async () => refusalOf(await sealed('name,day\nAda,1\n')),
      'was not made by turnbook backup',
    ],
    [
      'a later version of the seal',
      () => refusalOf(fileOf(Buffer.concat([Buffer.from('age-encryption.org/v2\n'), whole.subarray(22)]))),
      'a newer one would be right',
    ],
    [
      'a later version of the file',
      async () => refusalOf(await sealed(plain.replace('turnbook/backup@1', 'turnbook/backup@2'))),
      'is of the form turnbook/backup@2',
    ],
    [
      'a book of a newer program',
      async () =>
        refusalOf(
          await sealed(
            plain.replace('"migrations":[', '"migrations":[{"name":"99990101000000_later","checksum":"0"},'),
          ),
        ),
      'was made by a newer Turnbook',
    ],
    [
      'a book of an older program',
      async () =>
        refusalOf(
          await sealed(plain.replace(/\{"name":"2[^}]*\}\],"tables"/, '],"tables"').replace(',],', '],')),
        ),
      'was made by an older Turnbook',
    ],
    [
      'a book whose tables were changed by hand',
      async () => refusalOf(await sealed(plain.replace(/"checksum":"[0-9a-f]{8}/, '"checksum":"00000000'))),
      'was made by another Turnbook',
    ],
    [
      'one changed name, whoever sealed it again',
      async () => refusalOf(await sealed(plain.replace('Ada Fenn', 'Ada Fern'))),
      'the rows of Player are not those that were written',
    ],
    [
      'a row too few',
      async () => refusalOf(await sealed(plain.replace(/[^\n]*Ada Fenn[^\n]*\n/, ''))),
      'the rows of Player are not those that were written',
    ],
    [
      'something after its end',
      async () => refusalOf(await sealed(`${plain}more\n`)),
      'something follows its end',
    ],
    [
      'an end that is missing',
      async () => refusalOf(await sealed(plain.replace(/\{"end".*\n/, ''))),
      'it ends too early',
    ],
    ['a file that is not there', () => refusalOf(newFile()), 'there is no such file'],
  ])('refuses %s in a sentence and touches nothing', async (_what, refusal, sentence) => {
    expect(await refusal()).toContain(sentence)
  })

  it('refuses the demo in the place of a club, and a club in the place of the demo', async () => {
    const ofDemo = await sealed(plain.replaceAll('"isDemo":false', '"isDemo":true'))
    expect(await refusalOf(ofDemo)).toContain('holds the demo club')
    await ownerDatabase().$executeRawUnsafe('update "Club" set "isDemo" = true')
    expect(await refusalOf(file)).toContain('holds a club of people, and here is the demo club')
    await ownerDatabase().$executeRawUnsafe('update "Club" set "isDemo" = false')
  })

  it('asks, and without anybody to ask needs --yes', async () => {
    process.env.TURNBOOK_PASSPHRASE = passphrase
    const { exitCode, errors } = await runTurnbook(['restore', file])
    delete process.env.TURNBOOK_PASSPHRASE
    expect(exitCode).toBe(2)
    expect(errors).toContain('In the file: Kestrel Heath, as of ')
    expect(errors).toContain('--yes: is missing')
  })

  it('refuses a file of which any one bit is another', async () => {
    // Every bit of the header, then bits anywhere.
    const anyBit = fc.record({ at: fc.nat(whole.length - 1), bit: fc.nat(7) })
    await fc.assert(
      fc.asyncProperty(anyBit, async ({ at, bit }) => {
        const changed = Buffer.from(whole)
        changed[at] = (changed[at] ?? 0) ^ (1 << bit)
        await expect(lookIntoBackup(fileOf(changed), { passphrase })).rejects.toThrow(BackupFault)
      }),
      { numRuns: 250, examples: Array.from({ length: 160 }, (_, at) => [{ at, bit: at % 8 }]) },
    )
  }, 60_000)

  it('refuses a file cut anywhere', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), async (length) => {
        await expect(lookIntoBackup(fileOf(whole.subarray(0, length)), { passphrase })).rejects.toThrow(
          BackupFault,
        )
      }),
      { numRuns: 60 },
    )
  }, 60_000)
})

describe('a backup', () => {
  it('is refused with a short passphrase, over a file that is there, and in no folder', async () => {
    const ask = async (words: string[], secret = passphrase) => {
      process.env.TURNBOOK_PASSPHRASE = secret
      const { exitCode, errors } = await runTurnbook(['backup', ...words])
      delete process.env.TURNBOOK_PASSPHRASE
      return [exitCode, errors.trimEnd()]
    }
    expect(await ask([newFile()], 'fourteen chars')).toEqual([
      2,
      expect.stringContaining('has 14 letters; 15 or more'),
    ])
    expect(await ask([file])).toEqual([2, expect.stringContaining('is there already')])
    expect(readFileSync(file).equals(whole)).toBe(true)
    expect(await ask(['/nowhere/at/all/book.age'])).toEqual([
      2,
      expect.stringContaining('no such file or folder'),
    ])
    expect(await ask([])).toEqual([2, expect.stringContaining('FILE: is missing')])
    expect(await ask([newFile(), newFile()])).toEqual([2, expect.stringContaining('takes one FILE')])
  })

  it('costs whoever guesses at its passphrase the work that age itself asks', async () => {
    const dearly = newFile()
    process.env.TURNBOOK_PASSPHRASE = passphrase
    const folder = `${dearly}.data`
    process.env.TURNBOOK_DATA = folder
    const { exitCode, errors } = await runTurnbook(['backup', dearly])
    delete process.env.TURNBOOK_PASSPHRASE
    delete process.env.TURNBOOK_DATA
    expect(errors).toContain('Kestrel Heath')
    expect(errors).not.toContain(passphrase)
    expect(exitCode).toBe(0)
    // Its second line: salt and work factor. 18: the default of the age command, from memory.
    expect(readFileSync(dearly, 'latin1').split('\n')[1]).toMatch(/^-> scrypt [\w+/]{22} 18$/)
    expect(JSON.parse(readFileSync(`${folder}/backup.json`, 'utf8'))).toEqual({
      madeAt: expect.stringMatching(/Z$/),
    })
  }, 30_000)
})
