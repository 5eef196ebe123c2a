import 'server-only'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { getClub } from '#data/clubs'
import { inClub } from '#data/in-club'
import { removeLogin } from '#data/logins'
import { type Done, goTo } from '#server/action'
import { findViewer } from '#server/find-viewer'
import { homeOf } from '#server/home-of'
import type { LinkCode } from '#server/link-code'
import { logFault } from '#server/log'
import { findLogin, makeLogin, openSession } from '#server/sign-in'
import { forgetGuesses } from '#server/sign-in/forget-guesses'
import { mailAddressLink } from '#server/sign-in/mailed-links'
import { signInByPassword } from '#server/sign-in/sign-in-by-password'
import { setPassword } from '#server/sign-in/with-password'
import { deadLink, findGoodLink, type SpentLink, spendLinkAs, spendLinkToRecover } from '#server/spend-link'
import { dropWelcome } from '#server/welcome-cookie'

type Answer = Promise<Result<Done, Problem>>

/** Whoever is signed in takes what the link gives. */
export async function takeAsSignedInOf(code: LinkCode): Answer {
  const login = await findLogin()
  if (!login)
    return refuse({ path: '', message: 'You are signed out. Sign in first, then open the link again.' })
  const spent = await spendLinkAs(code, login)
  return spent.ok ? enter(spent.value, login.loginId) : spent
}

/** Whoever has no sign-in chooses one, and takes with it what the link gives: both, or neither. */
export async function takeWithNewSignInOf(
  code: LinkCode,
  given: { readonly email: string; readonly password: string; readonly address: string },
): Answer {
  const { email, password, address } = given
  const asked = await inClub(code.clubId, async (tx) => {
    const good = await findGoodLink(tx, code, new Date())
    return good && { person: good.person, kind: good.link.kind, clubName: (await getClub(tx)).name }
  })
  // One who has a sign-in makes no second: the page asks for the first.
  if (!asked || asked.kind === 'recover' || asked.person.loginId)
    return refuse({ path: '', message: deadLink })
  const { person, clubName } = asked
  const login = await makeLogin({ email, password, name: person.name, known: [clubName] })
  if (!login.ok) return login
  const { loginId } = login.value
  try {
    const spent = await spendLinkAs(code, { loginId })
    if (spent.ok) {
      const entered = await enter(spent.value, loginId)
      await askForProof(address)
      return entered
    }
    await removeLogin(loginId)
    return spent
  } catch (error) {
    // Takes it away only where nobody is known by it.
    await removeLogin(loginId)
    throw error
  }
}

/** A mail shows the address to be the person's own. Without it everything works but a way back by mail. */
async function askForProof(address: string): Promise<void> {
  try {
    await mailAddressLink({ address })
  } catch (error) {
    logFault('mail not sent', error)
  }
}

/** Whoever has a sign-in signs in with it on the way; the page then comes back. */
export async function signInOnTheWayOf(given: { readonly email: string; readonly password: string }): Answer {
  const done = await signInByPassword(given)
  return done.ok ? goTo('/welcome') : done
}

/** A new password for who has lost the old one. Signs nobody in: whoever set it can. */
export async function recoverOf(code: LinkCode, { password }: { readonly password: string }): Answer {
  const save = (loginId: string) => setPassword({ loginId, password })
  const spent = await spendLinkToRecover(code, { save })
  if (!spent.ok) return spent
  await forgetGuesses(spent.value.loginId)
  await dropWelcome()
  return goTo('/sign-in')
}

/** A new session, so that what was known of the one before opens nothing more; then to what the link was for. */
async function enter({ clubId, personId, playerId }: SpentLink, loginId: string): Answer {
  await dropWelcome()
  try {
    await openSession({ loginId, as: { clubId, personId } })
  } catch (error) {
    // What the link gave is there; the owner can sign in to it.
    logFault('first session not opened', error)
    return goTo('/sign-in')
  }
  if (playerId) return goTo(`/family/${playerId}`)
  const viewer = await findViewer({ clubId, personId })
  return goTo((viewer && homeOf(viewer)) ?? '/')
}
