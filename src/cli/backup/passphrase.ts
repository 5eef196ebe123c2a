import { readFile } from 'node:fs/promises'
import { askInSecret } from '#cli/backup/ask-in-secret'
import { whyNot } from '#cli/input'
import { InputError } from '#cli/verb'

const fewestLetters = 15
const variable = 'TURNBOOK_PASSPHRASE'

/**
 * The passphrase of a backup: from a file, from TURNBOOK_PASSPHRASE, or asked for on the terminal. Never from the
 * command line, which other programs can read.
 * @param isNew it is chosen now: asked for twice, and not to be short.
 * @throws InputError
 */
export async function readPassphrase({
  file,
  isNew,
  env = process.env,
}: {
  readonly file: string | undefined
  readonly isNew: boolean
  readonly env?: Readonly<Record<string, string | undefined>>
}): Promise<string> {
  if (file !== undefined) return checked(await firstLineOf(file), { path: '--passphrase-file', isNew })
  if (env[variable]) return checked(env[variable], { path: variable, isNew })
  if (!process.stdin.isTTY) {
    throw wrong(
      variable,
      'is missing, and nobody is there to ask; a passphrase in it, or --passphrase-file, would be right',
    )
  }
  const given = checked(await askInSecret('Passphrase: '), { path: 'passphrase', isNew })
  if (isNew && (await askInSecret('The same again: ')) !== given)
    throw wrong('passphrase', 'is not the same both times; the same twice would be right')
  return given
}

async function firstLineOf(file: string): Promise<string> {
  try {
    return (await readFile(file, 'utf8')).replace(/\r?\n$/, '')
  } catch (error) {
    throw wrong('--passphrase-file', `${whyNot(file, error)}; a file that can be read would be right`)
  }
}

function checked(
  passphrase: string,
  { path, isNew }: { readonly path: string; readonly isNew: boolean },
): string {
  const letters = [...passphrase].length
  if (letters === 0) throw wrong(path, 'is empty; a passphrase would be right')
  if (/[\r\n]/.test(passphrase)) throw wrong(path, 'is several lines; one line would be right')
  if (isNew && letters < fewestLetters)
    throw wrong(path, `has ${letters} letters; ${fewestLetters} or more, say five words, would be right`)
  return passphrase
}

function wrong(path: string, message: string): InputError {
  return new InputError([{ path, message }])
}
