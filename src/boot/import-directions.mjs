import { spawnSync } from 'node:child_process'
import { mkdirSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

const root = fileURLToPath(new URL('../../', import.meta.url))
const require = createRequire(import.meta.url)
const cruiserFolder = join(root, 'node_modules/dependency-cruiser')

/**
 * dependency-cruiser reads TypeScript through a TypeScript older than 7 and, finding none, silently reads no file
 * at all. Two packages named typescript cannot stand side by side without fighting over the `tsc` command, so the
 * copy that @ts-morph/common carries is shown to the cruiser alone.
 */
function giveTheCruiserItsTypeScript() {
  const folder = join(cruiserFolder, 'node_modules/typescript')
  const { ts } = require('@ts-morph/common')
  mkdirSync(folder, { recursive: true })
  const manifest = { name: 'typescript', version: ts.version, main: 'index.cjs' }
  writeFileSync(join(folder, 'package.json'), `${JSON.stringify(manifest)}\n`)
  writeFileSync(join(folder, 'index.cjs'), "module.exports = require('@ts-morph/common').ts\n")
}

/**
 * Holds the imports of `folders` against .dependency-cruiser.cjs.
 *
 * @param {{ folders: readonly string[], baseFolder?: string }} what baseFolder: where the folders are, the project by default.
 * @returns {{ files: number, violations: { rule: string, from: string, to: string }[] }}
 * @throws when the cruiser itself fails, or when it read no TypeScript.
 */
export function cruiseImports({ folders, baseFolder = root }) {
  giveTheCruiserItsTypeScript()
  const cruiser = join(cruiserFolder, 'bin/dependency-cruise.mjs')
  const config = join(baseFolder, '.dependency-cruiser.cjs')
  const answer = spawnSync(
    process.execPath,
    [cruiser, ...folders, '--config', config, '--output-type', 'json'],
    {
      cwd: baseFolder,
      encoding: 'utf8',
      maxBuffer: 256 * 1024 * 1024,
    },
  )
  if (answer.error) throw answer.error
  let result
  try {
    result = JSON.parse(answer.stdout)
  } catch {
    throw new Error(`dependency-cruiser failed:\n${answer.stderr || answer.stdout}`)
  }
  const files = result.modules.filter((module) => /\.tsx?$/.test(module.source)).length
  if (files === 0) throw new Error(`dependency-cruiser read no TypeScript file in ${folders.join(', ')}`)
  const violations = result.summary.violations.map(({ rule, from, to }) => ({ rule: rule.name, from, to }))
  return { files, violations }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { files, violations } = cruiseImports({ folders: ['src', 'seeds'] })
  for (const { rule, from, to } of violations) console.error(`${from} imports ${to}: ${rule}`)
  console.log(`${files} files, ${violations.length} imports against the rules`)
  process.exitCode = violations.length > 0 ? 1 : 0
}
