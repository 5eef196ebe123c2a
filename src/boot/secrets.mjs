import { randomBytes } from 'node:crypto'
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { Refusal } from './refusal.mjs'

const madeSecret = () => randomBytes(32).toString('base64url')

/** One per secret; each is made once and never changed. */
const names = /** @type {const} */ (['ownerPassword', 'appPassword', 'cookieSecret'])

/**
 * The secrets kept in the data folder, made when there are none. The file is for its owner's eyes only.
 *
 * @param {string} folder
 * @returns {{ ownerPassword: string, appPassword: string, cookieSecret: string }}
 * @throws {Refusal} when the database is there but its secrets are gone.
 */
export function readSecrets(folder) {
  const file = join(folder, 'secrets.json')
  if (existsSync(file)) return parseSecrets(file)
  if (existsSync(join(folder, 'postgres'))) {
    throw new Refusal(
      `${file} is missing, and it holds the passwords of the database beside it. Put it back from a copy of the folder.`,
    )
  }
  const secrets = { ownerPassword: madeSecret(), appPassword: madeSecret(), cookieSecret: madeSecret() }
  const draft = `${file}.${process.pid}`
  writeFileSync(draft, `${JSON.stringify(secrets, null, 2)}\n`, { mode: 0o600, flush: true })
  renameSync(draft, file)
  return secrets
}

function parseSecrets(file) {
  let secrets
  try {
    secrets = JSON.parse(readFileSync(file, 'utf8'))
  } catch (error) {
    throw new Refusal(`${file} cannot be read (${error.message}). Put it back from a copy of the folder.`)
  }
  for (const name of names) {
    if (typeof secrets[name] !== 'string' || secrets[name].length < 32) {
      throw new Refusal(
        `${file} lacks "${name}", a text of 32 characters or more. Put it back from a copy of the folder.`,
      )
    }
  }
  return secrets
}
