import { CouldNot } from '#cli/could-not'
import { InputError } from '#cli/verb'
import { orNotRunning } from '#cli/with-databases'
import { BackupFault } from '#exchange/backup/backup-fault'

const ofTheDisk = new Set(['ENOSPC', 'EDQUOT', 'EROFS', 'EACCES', 'EPERM', 'EIO'])
/** The server was stopped, or the connection broke. */
const ofTheConnection = new Set(['57P01', '57P02', '57P03', 'ECONNRESET', 'EPIPE', 'ETIMEDOUT'])
const notTheOwner = '42501'
const notLetIn = new Set(['28P01', '28000', '3D000'])

/** What is to be thrown for a failure: a sentence for the person where one says it, else the failure itself. */
export function orProblem(error: unknown, file: string): unknown {
  if (error instanceof BackupFault) return new InputError([{ path: file, message: error.message }])
  if (!(error instanceof Error)) return error
  const code = 'code' in error ? String(error.code) : ''
  if (ofTheDisk.has(code))
    return new CouldNot(`${file} could not be written or read (${code}). Nothing else was changed.`)
  if (ofTheConnection.has(code) || error.message.startsWith('Connection terminated'))
    return new CouldNot('The database stopped answering. What was there is there still; try again.')
  if (code === notTheOwner)
    return databaseProblem(
      'does not let this role do it; the owner of the tables in DATABASE_URL would be right',
    )
  if (notLetIn.has(code))
    return databaseProblem(
      `does not let us in (${error.message}); another address in DATABASE_URL would be right`,
    )
  return orNotRunning(error)
}

function databaseProblem(message: string): InputError {
  return new InputError([{ path: 'database', message }])
}
