import { stat } from 'node:fs/promises'
import { resolve } from 'node:path'
import { createInterface } from 'node:readline/promises'
import { listKeptErasures } from '#cli/backup/kept-erasures'
import { type BackupContents, lookIntoBackup } from '#cli/backup/look-into-backup'
import { orProblem } from '#cli/backup/or-problem'
import { readPassphrase } from '#cli/backup/passphrase'
import { open } from '#cli/backup/seal'
import { startProgress } from '#cli/backup/start-progress'
import { CouldNot } from '#cli/could-not'
import { dataFolderOf, findOwnerAddress } from '#cli/database-address'
import { whyNot } from '#cli/input'
import { untilStopped } from '#cli/until-stopped'
import { InputError, type Verb } from '#cli/verb'
import { lookAtBook } from '#data/whole-book/look-at-book'
import { replaceWholeBook } from '#data/whole-book/replace-whole-book'
import { whyNotHere } from '#data/whole-book/why-not-here'
import { BackupFault } from '#exchange/backup/backup-fault'
import { type BackupPiece, readBackup } from '#exchange/backup/read-backup'

const word = 'restore'

export const verb: Verb = {
  name: 'restore',
  summary: 'a backup in the place of the whole book, all of it or nothing',
  help:
    'Reads the whole file and checks it before anything is touched, says what is in it, and asks. Then the book is replaced in one ' +
    'step; pages wait meanwhile. Children erased since stay erased, everybody signs in again, open links and codes end.',
  operand: { name: 'FILE', means: 'a file that turnbook backup wrote' },
  options: [
    { name: 'yes', value: null, means: 'do not ask' },
    { name: 'passphrase-file', value: 'FILE', means: 'read the passphrase from this file' },
  ],
  run: async (call) => {
    const file = resolve(call.options.get('FILE') ?? '')
    await mustBeAFile(file)
    const ownerUrl = await findOwnerAddress()
    const erased = await listKeptErasures(dataFolderOf())
    const passphrase = await readPassphrase({ file: call.options.get('passphrase-file'), isNew: false })
    const progress = startProgress(call.say)
    try {
      await untilStopped('Stopped; the book is as it was.', async (signal) => {
        progress.now('reading and checking the whole file')
        const contents = await lookIntoBackup(file, { passphrase, signal })
        const here = await lookAtBook(ownerUrl)
        const why = whyNotHere(contents.header, here)
        if (why) throw new BackupFault(why)
        call.say(contentsSentence(contents))
        call.say(`Here now: ${namesOf(here.clubs)}. All of it is replaced.`)
        if (!call.options.has('yes')) await mustMeanIt(signal)
        const { erasedAgain } = await replaceWholeBook(ownerUrl, {
          header: contents.header,
          pieces: toldBySections(readBackup(open(file, passphrase)), progress.sometimes),
          erased,
          onStep: progress.now,
          signal,
        })
        if (erasedAgain > 0) call.say(`Erased since and erased again: ${erasedAgain} children.`)
      })
    } catch (error) {
      throw orProblem(error, file)
    }
    progress.now(
      'Restored. Everybody signs in again. Roles and passwords are as they were when it was made: look through them.',
    )
    return { kind: 'done', output: null }
  },
}

/** Says by the way how far it is. */
async function* toldBySections(
  pieces: AsyncIterable<BackupPiece>,
  tell: (doing: string) => void,
): AsyncGenerator<BackupPiece> {
  let rows = 0
  for await (const piece of pieces) {
    if (piece.kind === 'tally') rows += piece.rows
    if (piece.kind === 'section') tell(`putting the rows back: ${rows} so far`)
    yield piece
  }
}

function contentsSentence({ header, rows, rowsOf }: BackupContents): string {
  const count = (table: string) => rowsOf.get(table) ?? 0
  return (
    `In the file: ${namesOf(header.clubs)}, as of ${header.madeAt}; ${count('Squad')} squads, ${count('Player')} players, ` +
    `${count('Session')} practices and matches, ${rows} rows.`
  )
}

function namesOf(clubs: readonly { readonly name: string; readonly isDemo: boolean }[]): string {
  return clubs.map(({ name, isDemo }) => (isDemo ? `${name} (demo)` : name)).join(', ') || 'no club'
}

async function mustBeAFile(file: string): Promise<void> {
  const found = await stat(file).catch((error) => {
    throw new InputError([
      { path: 'FILE', message: `${whyNot(file, error)}; a file that turnbook backup wrote would be right` },
    ])
  })
  if (!found.isFile())
    throw new InputError([{ path: 'FILE', message: `${file} is not a file; a backup would be right` }])
}

async function mustMeanIt(signal: AbortSignal): Promise<void> {
  if (!process.stdin.isTTY) {
    const message = 'is missing, and nobody is there to ask; with it the book is replaced unasked'
    throw new InputError([{ path: '--yes', message }])
  }
  const terminal = createInterface({ input: process.stdin, output: process.stderr })
  const stopped = new AbortController()
  terminal.once('SIGINT', () => stopped.abort())
  try {
    const either = AbortSignal.any([signal, stopped.signal])
    const answer = await terminal.question(`Type ${word} to go on: `, { signal: either })
    if (answer.trim() === word) return
  } catch (error) {
    if (!stopped.signal.aborted) throw error
  } finally {
    terminal.close()
  }
  throw new CouldNot(`${word} was not typed; the book is as it was.`)
}
