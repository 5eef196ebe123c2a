import { lstat, stat } from 'node:fs/promises'
import { dirname, resolve } from 'node:path'
import { noteBackup } from '#cli/backup/note-backup'
import { orProblem } from '#cli/backup/or-problem'
import { readPassphrase } from '#cli/backup/passphrase'
import { saveBackup } from '#cli/backup/save-backup'
import { startProgress } from '#cli/backup/start-progress'
import { dataFolderOf, findOwnerAddress } from '#cli/database-address'
import { whyNot } from '#cli/input'
import { untilStopped } from '#cli/until-stopped'
import { InputError, type Verb } from '#cli/verb'

export const verb: Verb = {
  name: 'backup',
  summary: 'the whole book into one encrypted file, while the pages run',
  help:
    'One moment of the whole book, encrypted with a passphrase (an age file), read back and checked before it has its name. ' +
    'The passphrase is asked for, or comes from TURNBOOK_PASSPHRASE. Without it nobody can open the file: keep it somewhere else.',
  operand: { name: 'FILE', means: 'the name of a file to write' },
  options: [
    { name: 'replace', value: null, means: 'write over a file of that name' },
    { name: 'passphrase-file', value: 'FILE', means: 'read the passphrase from this file' },
  ],
  run: async (call) => {
    const file = resolve(call.options.get('FILE') ?? '')
    const ownerUrl = await findOwnerAddress()
    await mustBeWritable(file, { mayReplace: call.options.has('replace') })
    const passphrase = await readPassphrase({ file: call.options.get('passphrase-file'), isNew: true })
    const madeAt = new Date()
    const progress = startProgress(call.say)
    progress.now('reading the book and sealing it')
    const saved = await untilStopped('Stopped; no backup was written.', (signal) =>
      saveBackup({ ownerUrl, file, passphrase, madeAt, signal, onProgress: progress.sometimes }),
    ).catch((error) => {
      throw orProblem(error, file)
    })
    await noteBackup(dataFolderOf(), { madeAt })
    const clubs = saved.clubs.map(({ name }) => name).join(', ') || 'no club yet'
    progress.now(
      `${file}: ${clubs}; ${saved.rows} rows of ${saved.tables} tables, ${((await stat(file)).size / 1e6).toFixed(1)} MB, read back and checked.`,
    )
    return { kind: 'done', output: null }
  },
}

async function mustBeWritable(file: string, { mayReplace }: { readonly mayReplace: boolean }): Promise<void> {
  const refuse = (message: string) => {
    throw new InputError([{ path: 'FILE', message }])
  }
  const folder = await stat(dirname(file)).catch((error) =>
    refuse(`${whyNot(file, error)}; a folder that is there would be right`),
  )
  if (!folder?.isDirectory()) refuse(`${file} lies in no folder; a folder that is there would be right`)
  const stands = await lstat(file).catch(() => null)
  if (stands && !stands.isFile()) refuse(`${file} is not a file; the name of a file would be right`)
  if (stands && !mayReplace) refuse(`${file} is there already; another name, or --replace, would be right`)
}
