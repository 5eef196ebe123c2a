import { spawn } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { auditPackages } from './audit.mjs'
import { preparePages } from './checkout.mjs'
import { inProject, root } from './places.mjs'
import { playwrightCounts, vitestCounts } from './test-counts.mjs'

/**
 * @typedef {{ passed: number, failed: number }} Counts
 * @typedef {{ title: string, run: () => Promise<Counts> }} Part
 */

const program = (...path) => inProject('node_modules', ...path)

/** Runs a Node program in sight of the reader. @returns {Promise<number>} its exit code */
function runShown(script, options, env = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [script, ...options], {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'inherit', 'inherit'],
    })
    child.once('error', reject)
    child.once('exit', (code) => resolve(code ?? 1))
  })
}

/** A check that either holds or does not counts as one. */
async function oneCheck(script, options, env) {
  const isGood = (await runShown(script, options, env)) === 0
  return { passed: isGood ? 1 : 0, failed: isGood ? 0 : 1 }
}

/** Runs a test program that writes its results to a file, and counts them. */
async function withReport(run, count) {
  const folder = mkdtempSync(join(tmpdir(), 'turnbook-report-'))
  const file = join(folder, 'report.json')
  try {
    const exitCode = await run(file)
    const report = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : null
    return count(report, exitCode)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

function vitest(...projects) {
  const chosen = projects.flatMap((name) => ['--project', name])
  const run = (file) =>
    runShown(program('vitest/vitest.mjs'), [
      'run',
      ...chosen,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${file}`,
    ])
  return withReport(run, vitestCounts)
}

async function browser() {
  const { ensureBrowser } = await import('./browser.mjs')
  const CHROMIUM = await ensureBrowser()
  const run = (file) =>
    runShown(program('@playwright/test/cli.js'), ['test', '--reporter=list,json'], {
      CHROMIUM,
      PLAYWRIGHT_JSON_OUTPUT_FILE: file,
    })
  return withReport(run, playwrightCounts)
}

async function build() {
  await preparePages({})
  return { passed: 1, failed: 0 }
}

/** The unit tests in one time zone only, for the quick check. @type {Part} */
export const quickUnit = { title: 'Unit and property tests', run: () => vitest('unit') }

/** In the order in which they run: the quick ones first. @type {Record<string, Part>} */
export const parts = {
  types: { title: 'Types', run: () => oneCheck(program('typescript/bin/tsc'), ['--noEmit']) },
  style: {
    title: 'Style and lint',
    run: () => oneCheck(program('@biomejs/biome/bin/biome'), ['check', '--error-on-warnings', '.']),
  },
  imports: {
    title: 'Import directions',
    run: () => oneCheck(inProject('src/boot/import-directions.mjs'), []),
  },
  unused: {
    title: 'Unused files, exports and packages',
    run: () => oneCheck(program('knip/bin/knip.js'), []),
  },
  audit: { title: 'Known faults of packages', run: auditPackages },
  unit: { title: 'Unit and property tests, in two time zones', run: () => vitest('unit', 'unit-auckland') },
  db: { title: 'Tests on PostgreSQL', run: () => vitest('db') },
  build: { title: 'Building the pages', run: build },
  browser: { title: 'Tests in a browser', run: browser },
  boot: { title: 'Starting, stopping and being killed', run: () => vitest('boot') },
}
