import { readFile } from 'node:fs/promises'
import type { Readable } from 'node:stream'
import { buffer } from 'node:stream/consumers'
import { InputError } from '#cli/verb'

/**
 * The whole of a file (its name) or of a stream, as text.
 * @throws InputError when it cannot be read or is not UTF-8.
 */
export async function readInput(source: string | Readable): Promise<string> {
  const bytes = await readBytes(source)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new InputError([
      {
        path: typeof source === 'string' ? source : 'standard input',
        message: 'is not UTF-8 text; a file saved as UTF-8 would be right',
      },
    ])
  }
}

async function readBytes(source: string | Readable): Promise<Uint8Array> {
  if (typeof source !== 'string') return buffer(source)
  try {
    return await readFile(source)
  } catch (error) {
    throw new InputError([
      { path: '--in', message: `${whyNot(source, error)}; a file that can be read would be right` },
    ])
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'there is no such file or folder',
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
