import { mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable, Writable } from 'node:stream'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { runCommand } from '#cli/run-command'
import { runTurnbook } from '../support/run-turnbook'
import { smallSeason } from '../support/small-season'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'turnbook-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

const good = JSON.stringify(smallSeason())

describe('the turnbook command', () => {
  it('reads and writes files, and leaves nothing beside them', async () => {
    const from = join(folder, 'season.json')
    const to = join(folder, 'ledger.json')
    writeFileSync(from, good)
    writeFileSync(to, 'what stood there')
    expect(await runTurnbook(['ledger', '--in', from, `--out=${to}`])).toEqual({
      exitCode: 0,
      output: '',
      errors: '',
    })
    expect(readFileSync(to, 'utf8')).toBe((await runTurnbook(['ledger'], good)).output)
    expect(readdirSync(folder).sort()).toEqual(['ledger.json', 'season.json'])
  })

  it('leaves what stood in the file when it refuses', async () => {
    const to = join(folder, 'kept.json')
    writeFileSync(to, 'what stood there')
    const result = await runTurnbook(['ledger', '--out', to], good.replace('2026-09-01', '2026-02-30'))
    expect(result).toMatchObject({ exitCode: 2, output: '' })
    expect(readFileSync(to, 'utf8')).toBe('what stood there')
  })

  it('does not write over the file it reads, by whatever name', async () => {
    const from = join(folder, 'own.json')
    const link = join(folder, 'own-link.json')
    writeFileSync(from, good)
    symlinkSync(from, link)
    for (const to of [from, link]) {
      const result = await runTurnbook(['ledger', '--in', from, '--out', to])
      expect(result).toMatchObject({ exitCode: 2, output: '' })
      expect(result.errors).toMatch(/^--out: is the file of --in/)
    }
    expect(readFileSync(from, 'utf8')).toBe(good)
  })

  it.each([
    ['EPIPE', 'has had enough', 0, ''],
    ['ENOSPC', 'has no room left', 2, /^standard output: it cannot be used: the disk is full/],
  ])('on %s, where the reader %s, ends with %s %s', async (code, _what, exitCode, says) => {
    const output = new Writable({
      write: (_chunk, _encoding, done) => done(Object.assign(new Error(code), { code })),
    })
    const said: string[] = []
    const errors = new Writable({
      write: (chunk, _encoding, done) => {
        said.push(String(chunk))
        done()
      },
    })
    const input = Readable.from([Buffer.from(good)])
    expect(await runCommand(['ledger'], { input, output, errors })).toBe(exitCode)
    expect(said.join('')).toMatch(says)
  })

  it('writes through a link to the file behind it', async () => {
    const behind = join(folder, 'behind.json')
    const link = join(folder, 'link.json')
    writeFileSync(behind, '')
    symlinkSync(behind, link)
    expect((await runTurnbook(['ledger', '--out', link], good)).exitCode).toBe(0)
    expect(JSON.parse(readFileSync(behind, 'utf8')).format).toBe('turnbook/ledger@1')
  })

  it.each<[string, string[], string, RegExp]>([
    ['no verb', [], '', /^A verb is missing\.\nturnbook <verb> [\s\S]*\n {2}ledger /],
    [
      'an unknown verb',
      ['ledgers'],
      '',
      /^"ledgers" is not a verb of turnbook\.\nturnbook <verb> [\s\S]*\n {2}ledger /,
    ],
    ['a verb that objects have', ['constructor'], '', /is not a verb/],
    [
      'an unknown option',
      ['ledger', '--input', 'x'],
      '',
      /^--input: is not an option of ledger; --in, --out, --help would be right/,
    ],
    ['an option without its value', ['ledger', '--in'], '', /^--in: needs FILE after it/],
    ['an option twice', ['ledger', '--in', 'a', '--in', 'b'], '', /^--in: is given twice/],
    ['a stray word', ['ledger', 'season.json'], '', /^season\.json: is not expected/],
    [
      'a missing file',
      ['ledger', '--in', '/nowhere/season.json'],
      '',
      /^--in: \/nowhere\/season\.json cannot be used: there is no such file/,
    ],
    ['a folder to read', ['ledger', '--in', '/'], '', /^--in: \/ cannot be used: it is a folder/],
    [
      'a folder that is not there to write to',
      ['ledger', '--out', '/nowhere/x.json'],
      good,
      /^--out: \/nowhere\/x\.json cannot be used/,
    ],
    ['nothing to read', ['ledger'], '', /^\$: is empty/],
    ['text that is not JSON', ['ledger'], '{"format":', /^\$: is not JSON: in line 1, column 11/],
  ])('refuses %s with exit code 2 and a clear line', async (_what, words, input, says) => {
    const result = await runTurnbook(words, input)
    expect(result).toMatchObject({ exitCode: 2, output: '' })
    expect(result.errors).toMatch(says)
  })

  it('refuses what is not UTF-8', async () => {
    const result = await runTurnbook(['ledger'], Buffer.from(good.replace('Ada', 'Ad\u00e4'), 'latin1'))
    expect(result).toEqual({
      exitCode: 2,
      output: '',
      errors: 'standard input: is not UTF-8 text; a file saved as UTF-8 would be right\n',
    })
  })

  it('takes a file with a byte order mark', async () => {
    expect((await runTurnbook(['ledger'], `\uFEFF${good}`)).exitCode).toBe(0)
  })

  it('explains itself', async () => {
    expect(await runTurnbook(['--help'])).toMatchObject({ exitCode: 0, errors: '' })
    const help = await runTurnbook(['ledger', '--help'])
    expect(help).toMatchObject({ exitCode: 0, errors: '' })
    expect(help.output).toMatch(/--in FILE {3}read this file/)
  })
})
