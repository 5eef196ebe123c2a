import { existsSync } from 'node:fs'
import { pathToFileURL } from 'node:url'
import { writeFlagRegistry } from './flag-registry.mjs'
import { inProject } from './places.mjs'
import { runQuietly } from './run-quietly.mjs'
import { hashOf, readStamp, writeStamp } from './stamp.mjs'

const stampFile = inProject('node_modules/.turnbook-generated')
const client = inProject('src/data/generated/client.ts')

const wantedStamp = () => hashOf(['prisma/schema.prisma', 'prisma.config.ts', 'package-lock.json'])

export const clientIsStale = () => !existsSync(client) || readStamp(stampFile) !== wantedStamp()

/** Generates the database client from prisma/schema.prisma into src/data/generated. @param {{ signal?: AbortSignal }} how */
export async function generateClient({ signal }) {
  const env = {
    ...process.env,
    // Generating needs no schema engine; naming a file that exists keeps the command from fetching one.
    PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
    CHECKPOINT_DISABLE: '1',
    PRISMA_HIDE_UPDATE_MESSAGE: '1',
  }
  const failure = 'The database client could not be generated from prisma/schema.prisma:'
  await runQuietly(process.execPath, [inProject('node_modules/prisma/build/index.js'), 'generate'], {
    env,
    signal,
    failure,
  })
  writeStamp(stampFile, wantedStamp())
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  writeFlagRegistry()
  await generateClient({})
}
