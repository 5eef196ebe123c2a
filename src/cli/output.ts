import { lstat, realpath, rename, rm, writeFile } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import { whyNot } from '#cli/input'
import { InputError } from '#cli/verb'

/**
 * Writes the whole output to a file, or to standard output where `file` is undefined. A file is written beside and put
 * in place at once, so that what stood there stays whole until the new one is.
 * @throws InputError when the file cannot be written.
 */
export async function writeOutput(text: string, file: string | undefined): Promise<void> {
  if (file === undefined) return writeStandardOutput(text)
  try {
    await replaceFile(text, file)
  } catch (error) {
    throw new InputError([
      { path: '--out', message: `${whyNot(file, error)}; a file that can be written would be right` },
    ])
  }
}

async function replaceFile(text: string, file: string): Promise<void> {
  const target = await realpath(file).catch(() => file)
  const stands = await lstat(target).catch(() => null)
  // A device or a pipe is written to, never replaced.
  if (stands && !stands.isFile()) return writeFile(target, text)
  const beside = join(dirname(target), `.${basename(target)}.${process.pid}.part`)
  try {
    await writeFile(beside, text, stands ? { mode: stands.mode } : {})
    await rename(beside, target)
  } catch (error) {
    await rm(beside, { force: true })
    throw error
  }
}

function writeStandardOutput(text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    process.stdout.once('error', (error: NodeJS.ErrnoException) => {
      // Whoever was reading has had enough.
      if (error.code === 'EPIPE') resolve()
      else reject(error)
    })
    process.stdout.write(text, () => resolve())
  })
}
