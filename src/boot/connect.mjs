import pg from 'pg'
import { Refusal } from './refusal.mjs'

/**
 * Connects, works and closes.
 *
 * @template T
 * @param {{ url: string, name: string, hint?: string }} address
 *   name: of the setting it comes from; hint: what may help; both for the refusal.
 * @param {(client: import('pg').Client) => Promise<T>} work
 * @returns {Promise<T>}
 * @throws {Refusal} when nothing answers there, or the server does not let us in.
 */
export async function withClient({ url, name, hint = '' }, work) {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 10_000 })
  try {
    await client.connect()
  } catch (error) {
    throw new Refusal(`${name} does not lead to a database: ${why(error, client)} ${hint}`.trim())
  }
  try {
    return await work(client)
  } finally {
    await client.end()
  }
}

function why(error, { host, port, database, user }) {
  const place = `${host}:${port}`
  const known = {
    ECONNREFUSED: `no PostgreSQL answers at ${place}. Is it running?`,
    ENOTFOUND: `there is no machine named ${host}.`,
    '28P01': `${place} does not take the password of ${user}.`,
    28000: `${place} does not let ${user} in.`,
    '3D000': `${place} has no database named ${database}. Make it with: create database ${database}`,
  }
  return known[error.code] ?? `${place} says: ${error.message || error.code}`
}
