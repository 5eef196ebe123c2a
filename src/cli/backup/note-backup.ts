import { mkdir, rename, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

/** Notes in the data folder when the last backup was made; `npm start` reads it. */
export async function noteBackup(folder: string, { madeAt }: { readonly madeAt: Date }): Promise<void> {
  await mkdir(folder, { recursive: true })
  const file = join(folder, 'backup.json')
  const draft = `${file}.${process.pid}`
  await writeFile(draft, `${JSON.stringify({ madeAt: madeAt.toISOString() })}\n`, { mode: 0o600 })
  await rename(draft, file)
}
