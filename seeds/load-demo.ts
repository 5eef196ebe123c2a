import { closeDatabase, openDatabase } from '#data/database'
import { loadDemoClub } from './load-demo-club'

/** Enough to prove the plans and to smooth them; two or three seconds each. */
const workLimit = 2_000

/** Run as `tsx --conditions=react-server seeds/load-demo.ts` with DATABASE_URL, the owner's address, in the environment. */
async function main(): Promise<void> {
  const address = process.env.DATABASE_URL
  if (!address)
    throw new Error('DATABASE_URL must be set to the address of the database as the owner of its tables.')
  const started = Date.now()
  const say = (line: string) =>
    process.stdout.write(`${((Date.now() - started) / 1000).toFixed(1).padStart(5)} s  ${line}\n`)
  const owner = openDatabase(address, { connections: 1 })
  try {
    const isLoaded = await loadDemoClub(owner, say, { workLimit })
    say(isLoaded ? 'The demo club is loaded.' : 'The demo club is there already; nothing was changed.')
  } finally {
    await closeDatabase(owner)
  }
}

main().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`)
  process.exitCode = 1
})
