import 'server-only'
import { isSignInFresh } from '#access/session-limits'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { changeAddress } from '#data/logins'
import { placeOfRequest } from '#server/place-of-request'
import { takeTry, tooManyTries } from '#server/rate-limit'
import type { SignedLogin } from '#server/sign-in'
import { address } from '#server/sign-in/address'
import { signInLibrary } from '#server/sign-in/library'

/** Gives a sign-in another address. Asked soon after signing in, and counted: it tells whether an address is taken. */
export async function changeAddressOf(
  login: SignedLogin,
  wish: { readonly email: string; readonly now: Date },
): Promise<Result<null, Problem>> {
  if (!isSignInFresh(login.signedInAt, wish.now))
    return refuse({
      path: '',
      message:
        'You signed in some while ago. Sign out, sign in again, and do it within a quarter of an hour.',
    })
  const email = address.safeParse(wish.email)
  if (!email.success) return refuse({ path: 'email', message: email.error.issues[0]?.message ?? '' })
  const answer = await takeTry({ what: 'mailFrom', key: await placeOfRequest() })
  if (!answer.ok) return refuse({ path: '', message: tooManyTries(answer.seconds) })
  const { internalAdapter } = await signInLibrary().$context
  const other = await internalAdapter.findUserByEmail(email.data)
  if (other && other.user.id !== login.loginId)
    return refuse({ path: 'email', message: 'Another sign-in has this address. Look at how it is written.' })
  if (email.data !== login.email) await changeAddress({ loginId: login.loginId, email: email.data })
  return accept(null)
}
