import pg from 'pg'
import { Refusal } from './refusal.mjs'

/** The role that the pages work as, or one of its members: it owns nothing, and row-level security binds it. */
export const appRole = 'turnbook_app'

const limits = 'nosuperuser nobypassrls nocreatedb nocreaterole'
const notAllowed = '42501'

/**
 * Makes the app's role when the server has none; an existing role is left as it is.
 *
 * @param {import('pg').Client} owner
 * @param {{ password: string | null }} secret null: the role only passes its rights on to the role of DATABASE_APP_URL.
 * @throws {Refusal} with the SQL to run, when the owner may not make roles.
 */
export async function ensureAppRole(owner, { password }) {
  const { rowCount } = await owner.query('select from pg_roles where rolname = $1', [appRole])
  if (rowCount) return
  const login = (text) => (password === null ? 'nologin' : `login password ${text}`)
  const sql = (text) => `create role ${appRole} ${limits} ${login(text)}`
  const next =
    password === null
      ? 'then start again.'
      : `then set DATABASE_APP_URL to the same database with ${appRole} and that password, and start again.`
  await asOwnerMay(
    () => owner.query(sql(pg.escapeLiteral(password ?? ''))),
    'The role of DATABASE_URL may not make roles, and the app needs one that owns nothing. Run this as a role that may:\n\n' +
      `  ${sql("'a long password of your own'")};\n\n${next}`,
  )
}

/**
 * Gives the role of DATABASE_APP_URL, when it goes by another name, the rights of the app's role.
 *
 * @param {import('pg').Client} owner
 * @param {{ name: string }} role
 */
export async function joinAppRole(owner, { name }) {
  const { rows } = await owner.query("select pg_has_role($1, $2, 'usage') as has", [name, appRole])
  if (rows[0].has) return
  const sql = `grant ${appRole} to ${pg.escapeIdentifier(name)}`
  await asOwnerMay(
    () => owner.query(sql),
    `The role of DATABASE_URL may not give rights to ${name}. Run this as a role that may, then start again:\n\n  ${sql};`,
  )
}

async function asOwnerMay(work, refusal) {
  try {
    await work()
  } catch (error) {
    throw error.code === notAllowed ? new Refusal(refusal) : error
  }
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
