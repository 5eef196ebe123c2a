import { linkSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { beginning } from './processes.mjs'

/**
 * @typedef {{ pid: number, beginning: string, address: string | null }} Holder
 *   address: where the holder serves, once it does.
 */

/**
 * Takes the lock, or says who has it. A lock whose holder is gone, or whose process number now belongs to another
 * program, is taken over.
 *
 * @param {string} file
 * @returns {{ holder: null, setAddress: (address: string) => void, release: () => void } | { holder: Holder }}
 */
export function takeLock(file) {
  const own = { pid: process.pid, beginning: beginning(process.pid), address: null }
  const draft = `${file}.${process.pid}`
  const write = (/** @type {Holder} */ holder) =>
    writeFileSync(draft, `${JSON.stringify(holder)}\n`, { mode: 0o600 })
  write(own)
  try {
    while (!tryLink(draft, file)) {
      const holder = readHolder(file)
      if (holder && isHolding(holder)) return { holder }
      moveAside(file, holder)
    }
  } finally {
    rmSync(draft, { force: true })
  }
  return {
    holder: null,
    setAddress: (address) => {
      write({ ...own, address })
      renameSync(draft, file)
    },
    release: () => {
      if (readHolder(file)?.pid === process.pid) rmSync(file, { force: true })
    },
  }
}

/** A link is made wholly or not at all, and never over another file: two that try at once cannot both succeed. */
function tryLink(draft, file) {
  try {
    linkSync(draft, file)
    return true
  } catch (error) {
    if (error.code === 'EEXIST') return false
    throw error
  }
}

/** @returns {Holder | null} null: there is no lock, or nothing that can be read in it. */
function readHolder(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'))
  } catch {
    return null
  }
}

/** @param {Holder} holder */
function isHolding(holder) {
  const now = beginning(holder.pid)
  return now !== '' && now === holder.beginning
}

/** Between reading the lock and moving it another may have renewed it: then it is put back. */
function moveAside(file, stale) {
  const aside = `${file}.stale.${process.pid}`
  try {
    renameSync(file, aside)
  } catch (error) {
    if (error.code === 'ENOENT') return
    throw error
  }
  const moved = readHolder(aside)
  if (moved && JSON.stringify(moved) !== JSON.stringify(stale)) tryLink(aside, file)
  rmSync(aside, { force: true })
}
