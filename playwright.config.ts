import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { defineConfig } from '@playwright/test'
import { ensureBrowser } from './src/boot/browser.mjs'
import { tryPort } from './src/boot/ports.mjs'

// The workers read this file again, with the environment of the first reading: one port and one folder for the run.
if (!process.env.TURNBOOK_TEST_PORT) {
  const folder = mkdtempSync(join(tmpdir(), 'turnbook-browser-'))
  process.env.TURNBOOK_TEST_PORT = String(await tryPort(0))
  process.env.TURNBOOK_TEST_DATA = folder
  process.env.CHROMIUM = await ensureBrowser()
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
}

const ownBook = '**/pitch.spec.ts'
// Writes nothing into the book, and holds whatever others write meanwhile.
const onlyReading = '**/club-pages.spec.ts'

const port = process.env.TURNBOOK_TEST_PORT
const isRoot = process.getuid?.() === 0

export default defineConfig({
  testDir: 'tests/browser',
  workers: 2,
  projects: [
    // These share one club's book, so they go one at a time.
    { name: 'one-book', testIgnore: [ownBook, onlyReading], workers: 1 },
    // Beside them, what starts a book of its own.
    { name: 'own-book', testMatch: ownBook, workers: 1 },
    { name: 'only-reading', testMatch: onlyReading, workers: 1 },
  ],
  forbidOnly: true,
  timeout: 60_000,
  use: {
    baseURL: `http://localhost:${port}`,
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    trace: 'retain-on-failure',
    launchOptions: {
      executablePath: process.env.CHROMIUM,
      // Chromium's own sandbox does not work for root.
      args: isRoot ? ['--no-sandbox'] : [],
    },
  },
  webServer: {
    command: `"${process.execPath}" src/boot/start.mjs`,
    url: `http://localhost:${port}`,
    timeout: 300_000,
    gracefulShutdown: { signal: 'SIGTERM', timeout: 20_000 },
    stdout: 'pipe',
    env: {
      PORT: String(port),
      TURNBOOK_DATA: process.env.TURNBOOK_TEST_DATA ?? '',
      DATABASE_URL: '',
      DATABASE_APP_URL: '',
    },
  },
})
