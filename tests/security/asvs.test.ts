import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { asvsRequirements } from './asvs-requirements'

const page = readFileSync('tests/security/asvs-5.0-level-2.md', 'utf8')
const states = ['met', 'partly', 'not met', 'operator', 'not applicable']

type Row = {
  readonly id: string
  readonly level: number
  readonly state: string
  readonly how: string
  readonly files: readonly string[]
}

const rows: readonly Row[] = page
  .split('\n')
  .filter((line) => /^\| \d/.test(line))
  .map((line) => {
    const [id = '', level = '', state = '', how = '', held = ''] = line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim())
    return {
      id,
      level: Number(level),
      state,
      how,
      files: [...held.matchAll(/`([^`]+)`/g)].map(([, file = '']) => file),
    }
  })

describe('the page of ASVS 5.0', () => {
  it('has every requirement of levels 1 and 2 once, with its level', () => {
    const listed = rows.map(({ id, level }) => [id, level])
    expect(listed).toEqual([...asvsRequirements])
    // How many there are of each: the release's own preface, from memory.
    const levels = [...asvsRequirements.values()]
    expect([levels.filter((level) => level === 1).length, levels.length]).toEqual([70, 253])
  })

  it('says of each where it stands, and why where it is not met', () => {
    for (const { id, state, how } of rows) {
      expect(states, id).toContain(state)
      expect(how.length, id).toBeGreaterThan(3)
      if (state === 'not met' || state === 'partly') expect(how.length, id).toBeGreaterThan(30)
    }
  })

  it('names files that are there, and at least one for what is met', () => {
    for (const { id, state, files } of rows) {
      if (state === 'met') expect(files.length, id).toBeGreaterThan(0)
      expect(
        files.filter((file) => !existsSync(file)),
        id,
      ).toEqual([])
    }
  })
})
