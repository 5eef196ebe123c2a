import 'server-only'
import { forgetTries } from '#server/rate-limit'
import { signInLibrary } from '#server/sign-in/library'

/**
 * Forgets the passwords that were guessed for a sign-in: its owner has come some other way, and must not stay shut out
 * by whoever guessed.
 */
export async function forgetGuesses(loginId: string): Promise<void> {
  const { internalAdapter } = await signInLibrary().$context
  const user = await internalAdapter.findUserById(loginId)
  if (!user) return
  await forgetTries({ what: 'passwordOfAddress', key: user.email })
  await forgetTries({ what: 'passwordInAll', key: user.email })
}
