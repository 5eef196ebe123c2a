import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { z } from 'zod'
import { InputError } from '#cli/verb'
import type { Erased } from '#data/whole-book/erasures'

const name = 'erased.jsonl'

const shape = z.object({
  clubId: z.uuid(),
  playerId: z.uuid(),
  erasedAt: z.iso.datetime(),
  cause: z.enum(['request', 'retention']),
})

/**
 * Children of whom the data folder notes that they were erased: a list that outlives the database.
 * @throws InputError for a line that cannot be read: passing it over could bring a child back.
 */
export async function listKeptErasures(folder: string): Promise<readonly Erased[]> {
  const text = await readFile(join(folder, name), 'utf8').catch((error) => {
    if (error.code === 'ENOENT') return ''
    throw error
  })
  // A last line without an end was cut short before the erasure it notes was done.
  const lines = text.split('\n').slice(0, -1)
  return lines.flatMap((line, index) => (line.trim() === '' ? [] : [readLine(line, index + 1)]))
}

function readLine(line: string, number: number): Erased {
  try {
    return shape.parse(JSON.parse(line))
  } catch {
    const message = `cannot be read, and it may name a child that must stay erased; the line as Turnbook wrote it would be right`
    throw new InputError([{ path: `${name}, line ${number}`, message }])
  }
}
