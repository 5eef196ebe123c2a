import { lookIntoBackup } from '#cli/backup/look-into-backup'
import { saveBackup } from '#cli/backup/save-backup'
import { open } from '#cli/backup/seal'
import { replaceWholeBook } from '#data/whole-book/replace-whole-book'
import { readBackup } from '#exchange/backup/read-backup'

// A backup or a restore in a process of its own, to be killed. Says each step on a line.
const [what, file = '', ownerUrl = '', passphrase = ''] = process.argv.slice(2)
const say = (doing: string) => void process.stdout.write(`${doing}\n`)
if (what === 'backup') {
  await saveBackup({ ownerUrl, file, passphrase, madeAt: new Date(), workFactor: 8, onProgress: say })
} else {
  const { header } = await lookIntoBackup(file, { passphrase })
  const pieces = readBackup(open(file, passphrase))
  await replaceWholeBook(ownerUrl, { header, pieces, erased: [], onStep: say })
}
say('done')
