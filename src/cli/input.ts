import { readFile } from 'node:fs/promises'
import { buffer } from 'node:stream/consumers'
import { InputError } from '#cli/verb'

/**
 * The whole of a file, or of standard input where `file` is undefined, as text.
 * @throws InputError when it cannot be read or is not UTF-8.
 */
export async function readInput(file: string | undefined): Promise<string> {
  const bytes = await readBytes(file)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new InputError([
      { path: file ?? 'standard input', message: 'is not UTF-8 text; a file saved as UTF-8 would be right' },
    ])
  }
}

async function readBytes(file: string | undefined): Promise<Uint8Array> {
  if (file === undefined) return buffer(process.stdin)
  try {
    return await readFile(file)
  } catch (error) {
    throw new InputError([
      { path: '--in', message: `${whyNot(file, error)}; a file that can be read would be right` },
    ])
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'it may not be opened',
  EPERM: 'it may not be opened',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk may not be written to',
}

/** Why a file cannot be used, as a sentence. */
export function whyNot(file: string, error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  return `${file} cannot be used: ${reasons[code] ?? (error instanceof Error ? error.message : String(error))}`
}
