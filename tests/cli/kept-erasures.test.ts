import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { listKeptErasures } from '#cli/backup/kept-erasures'

const folder = mkdtempSync(join(tmpdir(), 'turnbook-'))
afterAll(() => rmSync(folder, { recursive: true }))

const one = {
  clubId: '0198c0de-0000-7000-8000-000000000001',
  playerId: '0198c0de-0000-7000-8000-000000000002',
  erasedAt: '2026-10-01T09:00:00.000Z',
  cause: 'request',
}
const other = { ...one, playerId: '0198c0de-0000-7000-8000-000000000003', cause: 'retention' }
const lineOf = (value: unknown) => `${JSON.stringify(value)}\n`
const read = (text: string) => {
  writeFileSync(join(folder, 'erased.jsonl'), text)
  return listKeptErasures(folder)
}

describe('the list of erased children beside the database', () => {
  it('is empty where none was erased yet', async () => {
    expect(await listKeptErasures(join(folder, 'nowhere'))).toEqual([])
    expect(await read('')).toEqual([])
  })

  it('is read line by line; a last line cut short was never finished', async () => {
    expect(await read(lineOf(one) + lineOf(other))).toEqual([one, other])
    expect(await read(lineOf(one) + lineOf(other).slice(0, -20))).toEqual([one])
  })

  it('stops a restore where a line cannot be read, and says which', async () => {
    for (const bad of [
      '{"clubId":\n',
      lineOf({ ...one, cause: 'whim' }),
      lineOf({ ...one, playerId: 'p1' }),
      '[]\n',
    ])
      await expect(read(lineOf(one) + bad)).rejects.toThrow(/^erased\.jsonl, line 2: cannot be read/)
  })
})
