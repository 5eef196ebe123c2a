import { chownSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { postgresAccount } from './postgres-account.mjs'
import { clusterParent, postgresPrograms } from './postgres-programs.mjs'
import { Refusal } from './refusal.mjs'
import { runQuietly } from './run-quietly.mjs'

/** The role that owns the cluster and everything in it. */
export const ownerRole = 'turnbook_owner'

/**
 * A cluster of PostgreSQL's own files, made when there is none, and ready to be started.
 *
 * @param {{ folder: string, password: string, isThrowAway?: boolean, signal?: AbortSignal }} wish
 *   folder: the data folder; the cluster is made below it. password: of the owner's role.
 *   isThrowAway: speed before safety, for tests: a power cut may lose everything.
 */
export async function prepareCluster({ folder, password, isThrowAway = false, signal }) {
  const account = postgresAccount()
  const programs = postgresPrograms(account)
  const parent = clusterParent(folder, account)
  const cluster = {
    account,
    programs,
    isThrowAway,
    folder: join(parent, 'postgres'),
    logFile: join(folder, 'postgres.log'),
  }
  if (!existsSync(cluster.folder)) await initialise(cluster, { parent, password, signal })
  const version = readFileSync(join(cluster.folder, 'PG_VERSION'), 'utf8').trim()
  if (version !== programs.majorVersion) {
    throw new Refusal(
      `The database in ${cluster.folder} was made by PostgreSQL ${version}; the packages hold ${programs.majorVersion}. ` +
        'Make a backup with the older program, move the folder away, start again and restore the backup.',
    )
  }
  return cluster
}

/** Made under another name first, so that being stopped half-way leaves no half cluster behind. */
async function initialise({ account, programs, isThrowAway, folder }, { parent, password, signal }) {
  const unfinished = `${folder}.new`
  const passwordFile = join(parent, 'postgres.password')
  rmSync(unfinished, { recursive: true, force: true })
  mkdirSync(unfinished, { mode: 0o700 })
  rmSync(passwordFile, { force: true })
  writeFileSync(passwordFile, `${password}\n`, { mode: 0o600, flag: 'wx' })
  if (account) for (const path of [unfinished, passwordFile]) chownSync(path, account.uid, account.gid)
  try {
    const options = [
      ...['-D', unfinished, '-U', ownerRole, '--auth=scram-sha-256', `--pwfile=${passwordFile}`],
      // PostgreSQL's own sorting by code point: the same on every machine, whatever languages it has installed.
      ...['--encoding=UTF8', '--locale=C', '--locale-provider=builtin', '--builtin-locale=C.UTF-8'],
      ...['--data-checksums', '--no-instructions', ...(isThrowAway ? ['--no-sync'] : [])],
    ]
    const failure = 'The database could not be made:'
    await runQuietly(programs.initdb, options, {
      account,
      cwd: parent,
      env: plainEnvironment(),
      signal,
      failure,
    })
  } catch (error) {
    rmSync(unfinished, { recursive: true, force: true })
    throw error
  } finally {
    rmSync(passwordFile, { force: true })
  }
  renameSync(unfinished, folder)
}

/** Without the settings by which PostgreSQL's programs would look elsewhere (PGDATA, PGPORT and so on). */
export function plainEnvironment() {
  const kept = Object.entries(process.env).filter(([name]) => !/^(PG|LC_|LANG)/.test(name))
  return { ...Object.fromEntries(kept), LC_ALL: 'C', TZ: 'UTC' }
}
