import { stat } from 'node:fs/promises'
import { InputError } from '#cli/verb'

/**
 * A file is not written over by what is made of it: what was written down would be lost.
 * @throws InputError when --in and --out are one file, by whatever names.
 */
export async function mustBeTwoFiles(options: ReadonlyMap<string, string>): Promise<void> {
  const [from, to] = await Promise.all(['in', 'out'].map((name) => identityOf(options.get(name))))
  if (from && from === to) {
    const message = 'is the file of --in, which would be lost; another file would be right'
    throw new InputError([{ path: '--out', message }])
  }
}

async function identityOf(file: string | undefined): Promise<string | null> {
  const found = file ? await stat(file).catch(() => null) : null
  return found?.isFile() ? `${found.dev}/${found.ino}` : null
}
