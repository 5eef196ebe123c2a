import pg from 'pg'
import { advisoryLock } from './migrate.mjs'
import { Refusal } from './refusal.mjs'

/** The role that the pages work as, unless DATABASE_APP_URL names another: it owns nothing, and row-level security binds it. */
export const appRole = 'turnbook_app'

const limits = 'nosuperuser nobypassrls nocreatedb nocreaterole'
const notAllowed = '42501'

/**
 * Makes the app's role when the server has none; an existing role is left as it is.
 *
 * @param {import('pg').Client} owner
 * @param {{ password: string }} secret
 * @throws {Refusal} with the SQL to run, when the owner may not make roles.
 */
export async function ensureAppRole(owner, { password }) {
  const { rowCount } = await owner.query('select from pg_roles where rolname = $1', [appRole])
  if (rowCount) return
  const sql = (text) => `create role ${appRole} login ${limits} password ${text}`
  try {
    await owner.query(sql(pg.escapeLiteral(password)))
  } catch (error) {
    if (error.code !== notAllowed) throw error
    throw new Refusal(
      'The role of DATABASE_URL may not make roles, and the app needs one that owns nothing. ' +
        `Run this as a role that may:\n\n  ${sql("'a long password of your own'")};\n\n` +
        `then set DATABASE_APP_URL to the same database with ${appRole} and that password, and start again.`,
    )
  }
}

/**
 * Gives the role of the app its rights, table by table, when it lacks them or new tables may have come.
 *
 * @param {import('pg').Client} owner
 * @param {{ name: string, hasNewTables: boolean }} role
 */
export async function giveAppRights(owner, { name, hasNewTables }) {
  const { rows } = await owner.query(`select has_table_privilege($1, '"Club"', 'select') as "hasRights"`, [
    name,
  ])
  if (rows[0].hasRights && !hasNewTables) return
  await owner.query('begin')
  await owner.query('select pg_advisory_xact_lock($1)', [advisoryLock])
  await owner.query('select grant_app_rights($1)', [name])
  await owner.query('commit')
}

/**
 * Holds the role that the app signs in as against what it must not be.
 *
 * @param {{ owner: import('pg').Client, app: import('pg').Client }} clients both on the same database
 * @returns {Promise<{ name: string }>}
 * @throws {Refusal} when row-level security would not bind it, or the two addresses lead to different databases.
 */
export async function checkAppRole({ owner, app }) {
  const { rows } = await app.query(
    `select current_user as name, rolsuper as "isSuperuser", rolbypassrls as "isUnbound", current_database() as database
     from pg_roles where rolname = current_user`,
  )
  const { name, isSuperuser, isUnbound, database } = rows[0]
  const refuse = (why) => {
    throw new Refusal(
      `The app would sign in to the database as ${name}, ${why}, so one club could see another's children. ` +
        'Set DATABASE_APP_URL to a role that is neither superuser, nor bypassrls, nor owner of the tables.',
    )
  }
  if (isSuperuser) refuse('a superuser')
  if (isUnbound) refuse('a role with bypassrls')
  const { rows: seenByOwner } = await owner.query(
    `select current_user as owner, current_database() as database, pg_has_role($1, current_user, 'member') as "isOwner"`,
    [name],
  )
  const [seen] = seenByOwner
  if (seen.isOwner) refuse(`which is, or may become, the owner ${seen.owner}`)
  if (seen.database !== database) {
    throw new Refusal(
      `DATABASE_URL leads to the database ${seen.database} and DATABASE_APP_URL to ${database}: they must be the same.`,
    )
  }
  return { name }
}
