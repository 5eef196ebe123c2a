import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { readPassphrase } from '#cli/backup/passphrase'

const folder = mkdtempSync(join(tmpdir(), 'turnbook-'))
afterAll(() => rmSync(folder, { recursive: true }))
const file = join(folder, 'passphrase')

describe('the passphrase of a backup', () => {
  it.each(['five words and a fence', 'five words and a fence\n', 'five words and a fence\r\n'])(
    'is the one line of a file: %j',
    async (text) => {
      writeFileSync(file, text)
      expect(await readPassphrase({ file, isNew: true, env: {} })).toBe('five words and a fence')
    },
  )

  it('comes from the environment, as it is, to the last space', async () => {
    const env = { TURNBOOK_PASSPHRASE: '  spaces count, too  ' }
    expect(await readPassphrase({ file: undefined, isNew: true, env })).toBe('  spaces count, too  ')
  })

  // 15 characters where a password is all there is: NIST SP 800-63B-4, 3.1.1.2. A character is a code point.
  it.each([
    ['14 letters', 'fourteen chars', 'has 14 letters; 15 or more'],
    ['14 letters that are 28 in UTF-16', '𝄞'.repeat(14), 'has 14 letters'],
    ['nothing', '\n', 'is empty'],
    ['two lines', 'five words and a fence\nand more\n', 'is several lines'],
  ])('is refused with %s', async (_what, text, sentence) => {
    writeFileSync(file, text)
    await expect(readPassphrase({ file, isNew: true, env: {} })).rejects.toThrow(sentence)
  })

  it('may be short where the backup is there already', async () => {
    writeFileSync(file, 'short')
    expect(await readPassphrase({ file, isNew: false, env: {} })).toBe('short')
  })

  it('is missing where there is no file, and nobody to ask', async () => {
    await expect(readPassphrase({ file: join(folder, 'nowhere'), isNew: true, env: {} })).rejects.toThrow(
      'there is no such file',
    )
    await expect(readPassphrase({ file: undefined, isNew: true, env: {} })).rejects.toThrow(
      'nobody is there to ask',
    )
  })
})
