import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { inProject } from './places.mjs'

const rulesFolder = inProject('src/fairness/flags/rules')
const registryFile = inProject('src/fairness/flags/registry.ts')
const lineWidth = 110

const constantName = (file) => file.replace(/-([a-z0-9])/g, (_, letter) => letter.toUpperCase())

/**
 * The source of the list of every flag rule.
 *
 * @param {readonly string[]} files names in the rules' folder, without `.ts`
 */
export function registrySource(files) {
  const names = [...files].sort()
  const imports = names.map(
    (file) => `import { rule as ${constantName(file)} } from '#fairness/flags/rules/${file}'`,
  )
  const constants = names.map(constantName)
  const declaration = (list) => `export const flagRules = ${list} as const satisfies readonly FlagRule[]`
  const oneLine = declaration(`[${constants.join(', ')}]`)
  const lines = declaration(`[\n${constants.map((name) => `  ${name},\n`).join('')}]`)
  return [
    "import type { FlagRule } from '#fairness/flags/flag-rule'",
    ...imports,
    '',
    '/** Every flag rule, by file name. Made by `npm run generate` from the files in rules/. */',
    oneLine.length <= lineWidth ? oneLine : lines,
    '',
  ].join('\n')
}

/** What the list should be now. */
export function wantedRegistry() {
  const files = existsSync(rulesFolder) ? readdirSync(rulesFolder) : []
  return registrySource(
    files.filter((name) => /^[a-z0-9-]+\.ts$/.test(name)).map((name) => name.slice(0, -3)),
  )
}

/** Writes the list when a rule came or went; it is committed, so that the code can be read without running anything. */
export function writeFlagRegistry() {
  const wanted = wantedRegistry()
  if (!existsSync(registryFile) || readFileSync(registryFile, 'utf8') !== wanted)
    writeFileSync(registryFile, wanted)
}
