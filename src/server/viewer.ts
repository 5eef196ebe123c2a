import 'server-only'
import { redirect } from 'next/navigation'
import { cache } from 'react'
import type { Viewer } from '#access/viewer'
import { setSessionPerson } from '#data/login-sessions'
import type { PersonOfLogin } from '#data/logins'
import { findViewer } from '#server/find-viewer'
import { findLogin, type SignedLogin } from '#server/sign-in'

/** The sign-in of a page's request, asked for once however many parts of the page want it. */
const loginOfRequest = cache(() => findLogin())

/** Who asks, or null when nobody is signed in, or not yet as anybody of a club. Read anew for every request. */
export const findSignedIn = cache(async (): Promise<Viewer | null> => {
  const login = await loginOfRequest()
  return login && viewerOfLogin(login)
})

/** As whom of which clubs the sign-in of this browser may look at them; empty when nobody is signed in. */
export async function listOwnPeople(): Promise<readonly PersonOfLogin[]> {
  return (await loginOfRequest())?.people ?? []
}

/** Who asks; without a sign-in the request goes to the first page. */
export async function getViewer(): Promise<Viewer> {
  return (await findSignedIn()) ?? redirect('/')
}

async function viewerOfLogin({ people, clubId, personId, sessionId }: SignedLogin): Promise<Viewer | null> {
  const [only, another] = people
  const chosen = people.find((one) => one.clubId === clubId && one.personId === personId)
  const person = chosen ?? (another ? undefined : only)
  if (!person) return null
  if (!chosen) await setSessionPerson(sessionId, person)
  return findViewer(person)
}
