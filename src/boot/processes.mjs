import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync, readlinkSync } from 'node:fs'

/** Whether this system lets us see every process of ours and where it works. */
export const seesProcesses = process.platform === 'linux'

export const pause = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds))

/** @param {number} pid */
export function isAlive(pid) {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error.code === 'EPERM'
  }
}

/**
 * The command line of a process, words parted by spaces; '' when there is none.
 *
 * @param {number} pid
 */
export function commandLine(pid) {
  try {
    if (seesProcesses) return readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ').trim()
    if (process.platform === 'win32') return isAlive(pid) ? 'unknown' : ''
    return execFileSync('ps', ['-o', 'command=', '-p', String(pid)], { encoding: 'utf8' }).trim()
  } catch {
    return ''
  }
}

/**
 * When a process began, in the system's own words: with its number it names one process for good, because
 * numbers are given out again. '' when there is no such process.
 *
 * @param {number} pid
 */
export function beginning(pid) {
  try {
    if (seesProcesses) {
      // The name in brackets may itself hold spaces and brackets, so count from behind the last one.
      const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ').at(-1)?.split(' ') ?? []
      const boot = readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim()
      return fields[0] === 'Z' ? '' : `${boot}/${fields[19]}`
    }
    if (process.platform === 'win32') return isAlive(pid) ? 'unknown' : ''
    return execFileSync('ps', ['-o', 'lstart=', '-p', String(pid)], { encoding: 'utf8' }).trim()
  } catch {
    return ''
  }
}

/**
 * Every process that works in the folder, as far as the system lets us see.
 *
 * @param {string} folder
 * @returns {number[]}
 */
export function processesIn(folder) {
  if (!seesProcesses) return []
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .map(Number)
    .filter((pid) => {
      try {
        return readlinkSync(`/proc/${pid}/cwd`) === folder
      } catch {
        return false
      }
    })
}

/**
 * Waits until the condition holds.
 *
 * @param {() => boolean | Promise<boolean>} condition
 * @param {number} milliseconds
 * @returns {Promise<boolean>} false when it did not come to hold in time.
 */
export async function waitUntil(condition, milliseconds) {
  const end = Date.now() + milliseconds
  while (Date.now() < end) {
    if (await condition()) return true
    await pause(20)
  }
  return condition()
}
