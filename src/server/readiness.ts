import 'server-only'
import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { findNewestMigration } from '#data/newest-migration'
import { logFault } from '#server/log'

const patienceMs = 3_000
/** Whoever asks over and over is told what was found a moment ago. */
const goodForMs = 1_000

let asked: { readonly at: number; readonly answer: Promise<boolean> } | null = null

/** Whether pages can be served: the database answers, and its tables are those that this build was made for. */
export function isReady(now = Date.now()): Promise<boolean> {
  if (!asked || now - asked.at > goodForMs) asked = { at: now, answer: lookAnew() }
  return asked.answer
}

async function lookAnew(): Promise<boolean> {
  let giveUp: ReturnType<typeof setTimeout> | undefined
  try {
    const late = new Promise<never>((_, reject) => {
      giveUp = setTimeout(() => reject(new DOMException('', 'TimeoutError')), patienceMs)
    })
    const [wanted, found] = await Promise.race([Promise.all([newestHere(), findNewestMigration()]), late])
    return wanted !== null && wanted === found
  } catch (error) {
    logFault('not ready', error)
    return false
  } finally {
    clearTimeout(giveUp)
  }
}

/** Of the migrations that came with this build, the last by name. */
async function newestHere(): Promise<string | null> {
  const entries = await readdir(join(process.cwd(), 'prisma', 'migrations'), { withFileTypes: true })
  const names = entries.filter((entry) => entry.isDirectory()).map(({ name }) => name)
  return names.sort().at(-1) ?? null
}
