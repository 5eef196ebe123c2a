import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { cruiseImports } from '../src/boot/import-directions.mjs'

/**
 * A project of the same shape, where one file imports what it should not. It lies inside the project, under
 * node_modules, so that nothing else reads it and packages are found from it.
 */
function broken(rule: string, file: string, source: string, target?: string) {
  return { rule, file, source, target }
}

const planted = [
  broken(
    'squad-looks-down-only',
    'src/squad/planted.ts',
    "import { x } from '#fairness/gap'",
    'src/fairness/gap.ts',
  ),
  broken(
    'squad-looks-down-only',
    'src/squad/typed.ts',
    "import type { X } from '#fairness/gap'",
    'src/fairness/gap.ts',
  ),
  broken(
    'squad-looks-down-only',
    'src/squad/near.ts',
    "import { x } from '../fairness/gap'",
    'src/fairness/gap.ts',
  ),
  broken(
    'practice-looks-down-only',
    'src/practice/planted.ts',
    "import { x } from '#match/match'",
    'src/match/match.ts',
  ),
  broken(
    'match-looks-down-only',
    'src/match/planted.ts',
    "import { x } from '#practice/turn'",
    'src/practice/turn.ts',
  ),
  broken(
    'access-looks-down-only',
    'src/access/planted.ts',
    "import { x } from '#match/match'",
    'src/match/match.ts',
  ),
  broken(
    'ui-looks-down-only',
    'src/ui/planted.tsx',
    "import { x } from '#server/session'",
    'src/server/session.ts',
  ),
  broken(
    'data-looks-down-only',
    'src/data/planted.ts',
    "import { x } from '#server/session'",
    'src/server/session.ts',
  ),
  broken(
    'rotation-looks-down-only',
    'src/rotation/planted.ts',
    "import { x } from '#solver/highs'",
    'src/solver/highs.ts',
  ),
  broken(
    'solver-looks-down-only',
    'src/solver/planted.ts',
    "import { x } from '#data/database'",
    'src/data/database.ts',
  ),
  broken('the-exact-solver-stays-in-one-file', 'src/solver/second.ts', "import highs from 'highs'"),
  broken('the-trade-is-pure', 'src/exposure/planted.ts', "import { readFileSync } from 'node:fs'"),
  broken('the-trade-is-pure', 'src/exposure/framed.ts', "import { useState } from 'react'"),
  broken('zod-stays-at-the-borders', 'src/ui/checked.tsx', "import { z } from 'zod'"),
  broken('the-database-client-stays-in-data', 'src/server/rows.ts', "import pg from 'pg'"),
  broken(
    'the-database-client-stays-in-data',
    'src/server/row.ts',
    "import { x } from '#data/generated/client'",
    'src/data/generated/client.ts',
  ),
  broken('no-barrels', 'src/ui/whole.tsx', "import { x } from '#squad/index'", 'src/squad/index.ts'),
  broken(
    'folders-are-in-the-table',
    'src/elsewhere/planted.ts',
    "import { x } from '#squad/player'",
    'src/squad/player.ts',
  ),
  broken(
    'program-does-not-import-tests',
    'src/ui/tested.tsx',
    "import { x } from '../../tests/builders'",
    'tests/builders.ts',
  ),
  broken('imports-resolve', 'src/ui/lost.tsx', "import { x } from '#ui/nowhere'"),
  broken(
    'no-cycles',
    'src/themes/egg.ts',
    "import { x } from '#themes/hen'\nexport const y = x",
    'src/themes/hen.ts',
  ),
]

const sound = 'src/fairness/sound.ts'

describe('the import rules', () => {
  let project: string
  let violations: { rule: string; from: string }[]

  beforeAll(() => {
    mkdirSync('node_modules/.cache', { recursive: true })
    project = mkdtempSync(resolve('node_modules/.cache/imports-'))
    const write = (file: string, source: string) => {
      mkdirSync(dirname(join(project, file)), { recursive: true })
      writeFileSync(join(project, file), `${source}\n`)
    }
    for (const name of ['.dependency-cruiser.cjs', 'tsconfig.json', 'package.json'])
      cpSync(name, join(project, name))
    for (const { target } of planted) if (target) write(target, 'export const x = 1\nexport type X = 1')
    write('src/themes/hen.ts', "import { y } from '#themes/egg'\nexport const x: number = y")
    write(sound, "import { x } from '#match/match'\nimport { addDays } from 'date-fns'")
    for (const { file, source } of planted) write(file, source)
    symlinkSync(resolve('node_modules'), join(project, 'node_modules'))
    violations = cruiseImports({ folders: ['src'], baseFolder: project }).violations
  }, 60_000)

  afterAll(() => rmSync(project, { recursive: true, force: true }))

  it.each(planted)('$rule catches $source in $file', ({ rule, file }) => {
    expect(violations).toContainEqual(expect.objectContaining({ rule, from: file }))
  })

  it('say nothing against an import that follows them', () => {
    expect(violations.filter(({ from }) => from === sound)).toEqual([])
  })

  it('are followed by the project', () => {
    const real = cruiseImports({ folders: ['src', 'seeds'] })
    expect(real.violations).toEqual([])
    expect(real.files).toBeGreaterThan(50)
  }, 60_000)
})
