import pg from 'pg'
import { Refusal } from './refusal.mjs'

/** The role that the pages work as: it owns nothing, and row-level security binds it. */
export const appRole = 'turnbook_app'

/**
 * Makes the app's role when the server has none; an existing role is left as it is.
 *
 * @param {import('pg').Client} owner
 * @param {{ password: string }} secret
 * @returns {Promise<'made' | 'there'>}
 * @throws {Refusal} with the SQL to run, when the owner may not make roles.
 */
export async function ensureAppRole(owner, { password }) {
  const { rowCount } = await owner.query('select from pg_roles where rolname = $1', [appRole])
  if (rowCount) return 'there'
  const sql = (secret) =>
    `create role ${appRole} login nosuperuser nobypassrls nocreatedb nocreaterole password ${secret}`
  try {
    await owner.query(sql(pg.escapeLiteral(password)))
    return 'made'
  } catch (error) {
    if (error.code !== '42501') throw error
    throw new Refusal(
      'The role of DATABASE_URL may not make roles, and the app needs one of its own that owns nothing. ' +
        `Run this as a role that may:\n\n  ${sql("'a long password of your own'")};\n\n` +
        `then set DATABASE_APP_URL to the same database with the role ${appRole} and that password, and start again.`,
    )
  }
}

/**
 * Holds the role of the app's address against what it must not be.
 *
 * @param {{ owner: import('pg').Client, app: import('pg').Client }} clients both on the same database
 * @returns {Promise<string>} the role's name
 * @throws {Refusal} when row-level security would not bind it.
 */
export async function checkAppRole({ owner, app }) {
  const { rows } = await app.query(
    `select current_user as name, rolsuper as "isSuperuser", rolbypassrls as "isUnbound",
            current_database() as database
     from pg_roles where rolname = current_user`,
  )
  const { name, isSuperuser, isUnbound } = rows[0]
  const refuse = (why) => {
    throw new Refusal(
      `DATABASE_APP_URL signs in as ${name}, ${why}: one club could see another's children. ` +
        'Give it a role that is neither superuser, nor bypassrls, nor owner of the tables.',
    )
  }
  if (isSuperuser) refuse('a superuser')
  if (isUnbound) refuse('a role with bypassrls')
  const { rows: owners } = await owner.query(
    `select current_user as owner, pg_has_role($1, current_user, 'member') as "isOwner"`,
    [name],
  )
  if (owners[0].isOwner) refuse(`which is, or may become, the owner ${owners[0].owner}`)
  const { rows: same } = await owner.query('select current_database() as database')
  if (same[0].database !== rows[0].database) {
    throw new Refusal(
      `DATABASE_APP_URL leads to the database ${rows[0].database}, DATABASE_URL to ${same[0].database}: they must be the same.`,
    )
  }
  return name
}
