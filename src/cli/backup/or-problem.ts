import { CouldNot } from '#cli/could-not'
import { InputError } from '#cli/verb'
import { orNotRunning } from '#cli/with-databases'
import { BackupFault } from '#exchange/backup/backup-fault'

const fullOrReadOnly = new Set(['ENOSPC', 'EDQUOT', 'EROFS', 'EACCES', 'EPERM', 'EIO'])

/** What is to be thrown for a failure: a sentence for the person where one says it, else the failure itself. */
export function orProblem(error: unknown, file: string): unknown {
  if (error instanceof BackupFault) return new InputError([{ path: file, message: error.message }])
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  if (fullOrReadOnly.has(code))
    return new CouldNot(`${file} could not be written or read (${code}). Nothing else was changed.`)
  return orNotRunning(error)
}
