import 'server-only'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { endSessionsOf } from '#data/login-sessions'
import { logSignIn } from '#server/log-sign-in'
import { address } from '#server/sign-in/address'
import { signInLibrary } from '#server/sign-in/library'
import { asKept, passwordFault } from '#server/sign-in/password-faults'

/**
 * Whose address and password these are. One answer, and about one time, for an address nobody has, for one without a
 * password, and for a wrong password: nobody learns here who is in the book.
 */
export async function loginOfPassword(given: {
  readonly email: string
  readonly password: string
}): Promise<Result<{ readonly loginId: string }, Problem>> {
  const { internalAdapter, password } = await signInLibrary().$context
  const email = address.safeParse(given.email)
  const found = email.success
    ? await internalAdapter.findUserByEmail(email.data, { includeAccounts: true })
    : null
  const hash = found?.accounts.find(({ providerId }) => providerId === 'credential')?.password
  if (!found || !hash) {
    // As long as looking would have taken.
    await password.hash(asKept(given.password))
    logSignIn('password refused')
    return refuse(wrong)
  }
  const loginId = found.user.id
  if (await password.verify({ hash, password: asKept(given.password) })) return accept({ loginId })
  logSignIn('password refused', { loginId })
  return refuse(wrong)
}

const wrong: Problem = {
  path: '',
  message: 'Address and password do not belong together. Look at both again, or have a link sent to you.',
}

/**
 * Gives a sign-in a new password, and signs it out everywhere else. Refused when it is weak. `except`: the session that
 * stays.
 */
export async function setPassword(wish: {
  readonly loginId: string
  readonly password: string
  readonly except?: string | null
}): Promise<Result<null, Problem>> {
  const { internalAdapter, password } = await signInLibrary().$context
  const user = await internalAdapter.findUserById(wish.loginId)
  if (!user) return refuse({ path: '', message: 'This sign-in is no longer there.' })
  const fault = passwordFault(wish.password, [user.name, user.email])
  if (fault) return refuse({ path: 'password', message: fault })
  const hash = await password.hash(asKept(wish.password))
  const accounts = await internalAdapter.findAccounts(user.id)
  if (accounts.some(({ providerId }) => providerId === 'credential')) {
    await internalAdapter.updatePassword(user.id, hash)
  } else {
    await internalAdapter.linkAccount({
      userId: user.id,
      accountId: user.id,
      providerId: 'credential',
      password: hash,
    })
  }
  await endSessionsOf({ loginId: user.id, except: wish.except ?? null })
  logSignIn('password set', { loginId: user.id })
  return accept(null)
}
