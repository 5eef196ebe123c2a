import { accessSync, chmodSync, constants, existsSync, mkdirSync, statSync } from 'node:fs'
import { dirname } from 'node:path'
import { canEnter, postgresAccount } from './postgres-account.mjs'
import { Refusal } from './refusal.mjs'

/**
 * Makes the data folder when there is none, and makes sure that it can be written to.
 *
 * @param {string} folder
 * @throws {Refusal}
 */
export function prepareDataFolder(folder) {
  // Asked first: a file must not have its rights changed as if it were a folder of ours.
  if (existsSync(folder) && !statSync(folder).isDirectory()) {
    throw new Refusal(
      `The data folder ${folder} is a file. Set TURNBOOK_DATA to a folder, or to a name not yet taken.`,
    )
  }
  try {
    if (!existsSync(folder)) {
      makeFolder(folder)
      chmodSync(folder, 0o700)
    }
    letPostgresIn(folder)
    accessSync(folder, constants.W_OK | constants.X_OK)
  } catch (error) {
    throw new Refusal(
      `The data folder ${folder} cannot be written to (${error.code}). ` +
        'Set TURNBOOK_DATA to a folder that can, or change who may write there.',
    )
  }
}

/** Not by mkdir's `recursive`: where the system answers ENOENT for a folder that exists (/proc), that never ends. */
function makeFolder(folder) {
  if (existsSync(folder)) return
  makeFolder(dirname(folder))
  mkdirSync(folder)
}

/** Its own files are closed one by one; PostgreSQL's account only has to be able to pass through to its cluster. */
function letPostgresIn(folder) {
  const account = postgresAccount()
  const entry = statSync(folder)
  if (account && entry.uid === 0 && !canEnter(entry, account)) chmodSync(folder, (entry.mode & 0o777) | 0o011)
}
