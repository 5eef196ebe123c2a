import { statSync } from 'node:fs'
import { dirname } from 'node:path'
import { root } from './places.mjs'

/** The account that Unix keeps for work that should own nothing. */
const nobody = { uid: 65534, gid: 65534 }

/**
 * PostgreSQL refuses to run as root. Started by root, it runs as the owner of the project's folder, or as nobody.
 *
 * @returns {{ uid: number, gid: number } | null} null: as whoever started us.
 */
export function postgresAccount() {
  if (process.getuid?.() !== 0) return null
  const { uid, gid } = statSync(root)
  return uid === 0 ? nobody : { uid, gid }
}

/**
 * Whether the account may go into the folder, and into every folder above it.
 *
 * @param {string} folder
 * @param {{ uid: number, gid: number } | null} account null: ourselves, and then the answer is yes.
 */
export function canReach(folder, account) {
  if (account === null) return true
  const above = dirname(folder)
  return canEnter(statSync(folder), account) && (above === folder || canReach(above, account))
}

/**
 * @param {{ mode: number, uid: number, gid: number }} entry a folder to enter or a program to run
 * @param {{ uid: number, gid: number }} account
 */
export function canEnter(entry, account) {
  const bit = entry.uid === account.uid ? 0o100 : entry.gid === account.gid ? 0o010 : 0o001
  return (entry.mode & bit) !== 0
}
