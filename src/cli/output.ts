import { lstat, realpath, rename, rm, writeFile } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import type { Writable } from 'node:stream'
import { whyNot } from '#cli/input'
import { InputError } from '#cli/verb'

/**
 * Writes the whole output to a file (its name) or to a stream. A file is written beside and put
 * in place at once, so that what stood there stays whole until the new one is.
 * @throws InputError when the file cannot be written.
 */
export async function writeOutput(text: string, target: string | Writable): Promise<void> {
  if (typeof target !== 'string') return writeStream(text, target)
  try {
    await replaceFile(text, target)
  } catch (error) {
    throw new InputError([
      { path: '--out', message: `${whyNot(target, error)}; a file that can be written would be right` },
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

function writeStream(text: string, stream: Writable): Promise<void> {
  return new Promise((resolve, reject) => {
    const end = (error?: NodeJS.ErrnoException | null) => {
      // Whoever was reading has had enough.
      if (!error || error.code === 'EPIPE') resolve()
      else reject(new InputError([{ path: 'standard output', message: whyNot('it', error) }]))
    }
    stream.once('error', end)
    stream.write(text, end)
  })
}
