import 'server-only'
import { redirect } from 'next/navigation'
import { cache } from 'react'
import { isSessionGood } from '#access/session-limits'
import type { Viewer } from '#access/viewer'
import { endSession, setSessionPerson, touchSession } from '#data/login-sessions'
import { listPeopleOfLogin, type PersonOfLogin } from '#data/logins'
import { isDemoMode } from '#server/demo-mode'
import { findViewer } from '#server/find-viewer'
import { findLogin, type SignedLogin } from '#server/sign-in'

/** A session that was used again is written down so once a minute at most. */
const touchSeconds = 60

/** Who asks, or null when nobody is signed in, or not yet as anybody of a club. Read anew for every request. */
export const findSignedIn = cache(async (): Promise<Viewer | null> => {
  const login = await findLogin()
  return login && viewerOfLogin(login, new Date())
})

/** As whom of which clubs the sign-in of this browser may look at them; empty when nobody is signed in. */
export async function listOwnPeople(): Promise<readonly PersonOfLogin[]> {
  const login = await findLogin()
  return login ? peopleOfLogin(login) : []
}

/** Who asks; without a sign-in the request goes to the first page. */
export async function getViewer(): Promise<Viewer> {
  return (await findSignedIn()) ?? redirect('/')
}

async function viewerOfLogin(login: SignedLogin, now: Date): Promise<Viewer | null> {
  const people = await peopleOfLogin(login)
  const [only, another] = people
  const chosen = people.find(({ clubId, personId }) => clubId === login.clubId && personId === login.personId)
  const person = chosen ?? (another ? undefined : only)
  if (!person) return null
  // A role that was given since may hold for less long.
  if (!isSessionGood(login, { role: person.role, now })) {
    await endSession(login)
    return null
  }
  if (!chosen) await setSessionPerson(login.sessionId, person)
  if (now.getTime() - login.usedAt.getTime() > touchSeconds * 1000) await touchSession(login.sessionId, now)
  return findViewer(person)
}

/** A demo's people are nobody where there is no demo any more. */
async function peopleOfLogin({ loginId }: SignedLogin): Promise<readonly PersonOfLogin[]> {
  return (await listPeopleOfLogin(loginId)).filter(({ isDemo }) => !isDemo || isDemoMode())
}
