import 'server-only'
import { headers } from 'next/headers'
import { isSessionGood, isSignInFresh } from '#access/session-limits'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { clearRunOut, endSessionsOf as endAll, endSession, touchSession } from '#data/login-sessions'
import { listPeopleOfLogin, type PersonOfLogin } from '#data/logins'
import { isDemoMode } from '#server/demo-mode'
import { logSignIn } from '#server/log-sign-in'
import { address } from '#server/sign-in/address'
import { cookieHeaders, dropCookie, keepCookie } from '#server/sign-in/keep-cookie'
import { signInLibrary } from '#server/sign-in/library'
import { asKept, passwordFault } from '#server/sign-in/password-faults'

// The one door to the library of sign-ins: whatever it is, nothing else of the program knows it.

/** A session that was used again is written down so once a minute at most. */
const touchSeconds = 60

/** Who is signed in in this browser, before it is asked as whom of which club. */
export type SignedLogin = {
  readonly loginId: string
  readonly name: string
  readonly email: string
  readonly isEmailVerified: boolean
  readonly sessionId: string
  readonly signedInAt: Date
  readonly usedAt: Date
  readonly clubId: string | null
  readonly personId: string | null
  /** As whom of which clubs it is known; a demo's people are nobody where there is no demo any more. */
  readonly people: readonly PersonOfLogin[]
}

/** Makes a sign-in; nobody is signed in by it. Refused when the password is weak or the address has one already. */
export async function makeLogin(wish: {
  readonly email: string
  readonly name: string
  readonly password: string
  /** What else a guesser would know: the club's name. */
  readonly known?: readonly string[]
}): Promise<Result<{ loginId: string }, Problem>> {
  const email = address.safeParse(wish.email)
  if (!email.success) return refuse({ path: 'email', message: email.error.issues[0]?.message ?? '' })
  const fault = passwordFault(wish.password, [wish.name, email.data, ...(wish.known ?? [])])
  if (fault) return refuse({ path: 'password', message: fault })
  const { internalAdapter, password } = await signInLibrary().$context
  if (await internalAdapter.findUserByEmail(email.data)) return refuse(addressTaken)
  const hash = await password.hash(asKept(wish.password))
  try {
    const { id: loginId } = await internalAdapter.createUser(
      { email: email.data, name: wish.name, emailVerified: false },
      { method: 'email-password' },
    )
    await internalAdapter.linkAccount({
      userId: loginId,
      accountId: loginId,
      providerId: 'credential',
      password: hash,
    })
    return accept({ loginId })
  } catch (error) {
    // Two at once: the database keeps one.
    if (await internalAdapter.findUserByEmail(email.data)) return refuse(addressTaken)
    throw error
  }
}

const addressTaken: Problem = {
  path: 'email',
  message: 'There is a sign-in with this address already. Sign in with it first, then open the link again.',
}

/**
 * Signs this browser in with a new token; what it was signed in as before ends. Whoever calls has seen proof that it is
 * the sign-in's owner. `as`: at which club, as whom; null where it is known as nobody, or as several.
 */
export async function openSession({
  loginId,
  as,
}: {
  readonly loginId: string
  readonly as: { readonly clubId: string; readonly personId: string } | null
}): Promise<void> {
  await leaveSession()
  await clearRunOut(new Date())
  const { headers: made } = await signInLibrary().api.openSession({
    body: { loginId, clubId: as?.clubId ?? null, personId: as?.personId ?? null },
    headers: new Headers(await headers()),
    returnHeaders: true,
  })
  await keepCookie(made)
  logSignIn('signed in', { loginId })
}

/**
 * Who is signed in in this browser; null: nobody, or one whose time is over. Asked anew for every request: a role that was
 * given since may hold for less long.
 */
export async function findLogin(now = new Date()): Promise<SignedLogin | null> {
  const sent = await cookieHeaders()
  const found = sent && (await signInLibrary().api.getSession({ headers: sent }))
  if (!found) return null
  const { session, user } = found
  const times = { signedInAt: session.createdAt, usedAt: session.updatedAt }
  const people = (await listPeopleOfLogin(user.id)).filter(({ isDemo }) => !isDemo || isDemoMode())
  if (!isSessionGood(times, { roles: people.map(({ role }) => role), now })) {
    await endSession({ loginId: user.id, sessionId: session.id })
    return null
  }
  if (now.getTime() - times.usedAt.getTime() > touchSeconds * 1000) await touchSession(session.id, now)
  return {
    loginId: user.id,
    name: user.name,
    email: user.email,
    isEmailVerified: user.emailVerified,
    sessionId: session.id,
    ...times,
    clubId: session.clubId ?? null,
    personId: session.personId ?? null,
    people,
  }
}

/** Signs this browser out, on the server too: its cookie opens nothing any more, wherever it is kept. */
export async function leaveSession(): Promise<void> {
  const login = await findLogin()
  if (login) {
    await endSession(login)
    logSignIn('signed out', { loginId: login.loginId })
  }
  if (await cookieHeaders()) await dropCookie()
}

/** Signs a sign-in out everywhere, but for the session that is named. */
export async function endSessionsOf(at: {
  readonly loginId: string
  readonly except?: string | null
}): Promise<number> {
  const ended = await endAll(at)
  logSignIn('signed out everywhere', { loginId: at.loginId })
  return ended
}

/** Whether whoever asks has signed in within the last quarter of an hour: for what cannot be undone. */
export async function isFresh(now = new Date()): Promise<boolean> {
  const login = await findLogin()
  return login !== null && isSignInFresh(login.signedInAt, now)
}
