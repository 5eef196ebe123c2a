import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const dayMilliseconds = 24 * 60 * 60 * 1000
const command = 'npm run turnbook -- backup FILE'

/**
 * When the last backup was made, as a sentence that names the command; `turnbook backup` leaves the note.
 *
 * @param {string} folder the data folder
 * @param {Date} now
 */
export function lastBackupSentence(folder, now) {
  const madeAt = readNote(join(folder, 'backup.json'))
  if (!madeAt) return `No backup yet: ${command}`
  const days = Math.max(0, Math.floor((now.getTime() - madeAt.getTime()) / dayMilliseconds))
  if (days === 0) return 'The last backup is less than a day old.'
  return `The last backup is ${days} ${days === 1 ? 'day' : 'days'} old: ${command}`
}

/** Null when there is none, or nothing that can be read: then it is as good as none. */
function readNote(file) {
  if (!existsSync(file)) return null
  try {
    const madeAt = new Date(JSON.parse(readFileSync(file, 'utf8')).madeAt)
    return Number.isNaN(madeAt.getTime()) ? null : madeAt
  } catch {
    return null
  }
}
