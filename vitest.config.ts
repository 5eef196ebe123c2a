import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url))

const resolve = {
  alias: [
    { find: /^#(?=[a-z-]+\/)/, replacement: here('./src/') },
    // The real module throws outside a server build; the tests are their own server.
    { find: 'server-only', replacement: here('./node_modules/server-only/empty.js') },
  ],
}

const needsDatabase = [
  'tests/data/**/*.test.ts',
  'tests/server/**/*.test.ts',
  'tests/seeds/**/*.test.ts',
  'tests/backup/**/*.test.ts',
]
const needsProcess = ['tests/boot/**/*.test.ts']

const unit = {
  include: ['tests/**/*.test.{ts,tsx}'],
  exclude: [...needsDatabase, ...needsProcess, 'tests/browser/**'],
  // A time zone can be set for a process, not for a thread.
  pool: 'forks' as const,
  // The code is without state: one process may run many files, and reads the program once.
  isolate: false,
  // Generous: what a test waits for is the machine, which may be busy or slow.
  testTimeout: 60_000,
}

export default defineConfig({
  test: {
    // Left alone it keeps one processor free, which halves a machine of two.
    maxWorkers: availableParallelism(),
    projects: [
      { resolve, test: { ...unit, name: 'unit', env: { TZ: 'UTC' } } },
      {
        resolve,
        test: {
          ...unit,
          name: 'unit-auckland',
          // These know no day: to run them twice would only take time.
          exclude: [
            ...unit.exclude,
            'tests/{access,architecture,lineup,planning,rotation,solver}{/**,.test.ts}',
            // What reads weeks of a term from days stays.
            'tests/ahead/{chance,attendance,explain,rules}/**',
            'tests/ahead/{quick-plan,lean-to,find-ahead-clash,check-leans,even-seats}.test.ts',
            'tests/exchange/plan-request/**',
            'tests/exchange/match-request/**',
            'tests/cli/{match-plan,plan,process,rotation}.test.ts',
            'tests/support/**',
          ],
          env: { TZ: 'Pacific/Auckland' },
        },
      },
      {
        resolve,
        test: {
          name: 'db',
          include: needsDatabase,
          pool: 'forks',
          globalSetup: 'tests/support/database-setup.ts',
          setupFiles: 'tests/support/database-for-this-file.ts',
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        resolve,
        test: {
          name: 'boot',
          include: needsProcess,
          pool: 'forks',
          globalSetup: 'tests/support/book-setup.ts',
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
})
