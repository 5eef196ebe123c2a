import { createReadStream } from 'node:fs'
import { pipeline, Readable } from 'node:stream'
import type { ReadableStream as WebStream } from 'node:stream/web'
import { createGunzip, createGzip } from 'node:zlib'
import { Decrypter, Encrypter } from 'age-encryption'
import { BackupFault, isDamaged } from '#exchange/backup/backup-fault'

const firstLine = 'age-encryption.org/v1\n'
/** scrypt with 2^18 rounds: what age itself takes; about a second and 256 MB for each guess. */
export const defaultWorkFactor = 18

/** A fault of one stream ends the next one with it, and is thrown to whoever reads the last. */
const faultsGoOn = () => {}

/** A stream of bytes, compressed and encrypted as an age file with a passphrase. */
export async function seal(
  plain: AsyncIterable<Buffer>,
  { passphrase, workFactor }: { readonly passphrase: string; readonly workFactor: number },
): Promise<AsyncIterable<Uint8Array>> {
  const encrypter = new Encrypter()
  encrypter.setPassphrase(passphrase)
  encrypter.setScryptWorkFactor(workFactor)
  const pressed = pipeline(Readable.from(plain, { objectMode: false }), createGzip(), faultsGoOn)
  return (await encrypter.encrypt(webOf(pressed))) as unknown as AsyncIterable<Uint8Array>
}

/**
 * What `seal` sealed in a file.
 * @throws BackupFault, now or while it is read, for another file, another passphrase, or one byte that was changed.
 */
export async function* open(file: string, passphrase: string): AsyncGenerator<Uint8Array> {
  await mustBeAge(file)
  const decrypter = new Decrypter()
  decrypter.addPassphrase(passphrase)
  const source = createReadStream(file)
  try {
    const plain = await decrypter.decrypt(webOf(source)).catch((error) => {
      throw whyShut(error)
    })
    yield* pipeline(Readable.fromWeb(plain as unknown as WebStream), createGunzip(), faultsGoOn)
  } catch (error) {
    if (error instanceof BackupFault || isOfTheDisk(error)) throw error
    throw isDamaged('its seal is broken, or it is cut short')
  } finally {
    source.destroy()
  }
}

async function mustBeAge(file: string): Promise<void> {
  let begins = ''
  for await (const piece of createReadStream(file, { end: firstLine.length - 1 })) begins += String(piece)
  if (begins === firstLine) return
  throw new BackupFault(
    begins.startsWith('age-encryption.org/')
      ? 'is encrypted in a way that this Turnbook does not know; a newer one would be right'
      : 'was not made by turnbook backup, or its beginning is damaged; a file that was would be right',
  )
}

function whyShut(error: unknown): Error {
  const isShut = error instanceof Error && error.message.startsWith('no identity matched')
  return isShut
    ? new BackupFault('does not open with this passphrase; the one it was made with would be right')
    : isOfTheDisk(error)
      ? error
      : isDamaged('its first lines are not as they were written')
}

function isOfTheDisk(error: unknown): error is Error {
  return error instanceof Error && 'syscall' in error
}

function webOf(stream: Readable): ReadableStream<Uint8Array> {
  return Readable.toWeb(stream) as unknown as ReadableStream<Uint8Array>
}
