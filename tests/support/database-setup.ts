import type { TestProject } from 'vitest/node'
import { startThrowAwayPostgres } from '../../src/boot/throw-away-postgres.mjs'

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the run's own PostgreSQL is: an address for each role, without the name of a database at its end. */
    readonly databaseServer: { readonly ownerUrl: string; readonly appUrl: string }
  }
}

/** One PostgreSQL for the whole run; each test file clones a database from its template. */
export default async function startDatabase(project: TestProject) {
  const server = await startThrowAwayPostgres()
  project.provide('databaseServer', { ownerUrl: server.ownerUrl(''), appUrl: server.appUrl('') })
  return () => server.stop()
}
