import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { dataFolderOf } from '#cli/database-address'
import { dataFolder } from '../../src/boot/places.mjs'

const projects = mkdtempSync(join(tmpdir(), 'turnbook-'))
afterAll(() => rmSync(projects, { recursive: true }))

function projectWith(...folders: string[]): string {
  const project = mkdtempSync(join(projects, 'project-'))
  for (const folder of folders) mkdirSync(join(project, folder))
  return project
}

const environment = (more: Readonly<Record<string, string | undefined>>): NodeJS.ProcessEnv => ({
  NODE_ENV: 'test',
  ...more,
})

describe('the data folder of the command', () => {
  it.each([
    { TURNBOOK_DATA: '/somewhere' },
    { TURNBOOK_DATA: 'near' },
    { TURNBOOK_DEMO: '0' },
    { TURNBOOK_DEMO: '1' },
  ])('is that of the start, where it is said: %j', (said) => {
    expect(dataFolderOf(environment(said), process.cwd())).toBe(dataFolder(environment(said)))
  })

  it.each([
    [[], '.turnbook'],
    [['.turnbook'], '.turnbook'],
    [['.turnbook-club'], '.turnbook-club'],
  ])('is the one that is there of %j: %s', (there, found) => {
    const project = projectWith(...there)
    expect(dataFolderOf(environment({}), project)).toBe(join(project, found))
  })

  it('is asked for where both are there: a backup of the demo is none of the club', () => {
    const project = projectWith('.turnbook', '.turnbook-club')
    expect(() => dataFolderOf(environment({}), project)).toThrow('TURNBOOK_DEMO=0 for the club')
    expect(dataFolderOf(environment({ TURNBOOK_DEMO: '0' }), project)).toBe(join(project, '.turnbook-club'))
  })
})
