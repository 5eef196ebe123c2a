import 'server-only'
import { isSignInFresh } from '#access/session-limits'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { endSessionsOf } from '#data/login-sessions'
import { changeAddress } from '#data/logins'
import { logFault } from '#server/log'
import { sendMail } from '#server/mail'
import { placeOfRequest } from '#server/place-of-request'
import { takeTry, tooManyTries } from '#server/rate-limit'
import type { SignedLogin } from '#server/sign-in'
import { address } from '#server/sign-in/address'
import { isOfDemo } from '#server/sign-in/demo-login'
import { signInLibrary } from '#server/sign-in/library'
import { signInAgain } from '#server/sign-in/sign-in-again'

/** Gives a sign-in another address. Asked soon after signing in, and counted: it tells whether an address is taken. */
export async function changeAddressOf(
  login: SignedLogin,
  wish: { readonly email: string; readonly now: Date },
): Promise<Result<null, Problem>> {
  if (!isSignInFresh(login.signedInAt, wish.now)) return refuse(signInAgain)
  if (isOfDemo(login.email)) return refuse(ofDemo)
  const email = address.safeParse(wish.email)
  if (!email.success) return refuse({ path: 'email', message: email.error.issues[0]?.message ?? '' })
  const answer = await takeTry({ what: 'mailFrom', key: await placeOfRequest() })
  if (!answer.ok) return refuse({ path: '', message: tooManyTries(answer.seconds) })
  const { internalAdapter } = await signInLibrary().$context
  const other = await internalAdapter.findUserByEmail(email.data)
  if (other && other.user.id !== login.loginId) return refuse(taken)
  if (email.data === login.email) return accept(null)
  try {
    await changeAddress({ loginId: login.loginId, email: email.data })
  } catch (error) {
    // Two at once: the database gives it to one.
    if (await internalAdapter.findUserByEmail(email.data)) return refuse(taken)
    throw error
  }
  await endSessionsOf({ loginId: login.loginId, except: login.sessionId })
  // Whoever has the old address learns of it; nothing waits for that mail.
  void sendMail({ to: login.email, ...moved }).catch((error) => logFault('mail not sent', error))
  return accept(null)
}

const ofDemo: Problem = {
  path: 'email',
  message: 'Whoever looks into the demo shares this sign-in, and it keeps its address.',
}

const taken: Problem = {
  path: 'email',
  message: 'Another sign-in has this address. Look at how it is written.',
}

const moved = {
  subject: 'Your sign-in has another address',
  text: "Your sign-in to the squad's book was given another e-mail address, and this one opens it no more. Was it not you? Then tell the administrator of your club at once.\n",
}
