import 'server-only'
import { claimAdult, getAdult } from '#data/adults'
import { inClub } from '#data/in-club'
import { signInLibrary } from '#server/sign-in/library'

/** No mail reaches an address that ends so (RFC 2606, 2). */
const demoPlace = '@demo.invalid'

/** Whether a sign-in is one that a demo's buttons share. */
export const isOfDemo = (email: string) => email.endsWith(demoPlace)

/**
 * The sign-in of somebody who is offered on the first page of a demo, made when it is first needed: without a password,
 * at an address that no mail reaches.
 */
export async function demoLoginOf(person: {
  readonly clubId: string
  readonly personId: string
}): Promise<string> {
  const adult = await inClub(person.clubId, (tx) => getAdult(tx, person.personId))
  if (adult.loginId) return adult.loginId
  const { internalAdapter } = await signInLibrary().$context
  const email = `${person.personId}${demoPlace}`
  const known = await internalAdapter.findUserByEmail(email)
  const loginId = known?.user.id ?? (await makeLoginAt(email, adult.name))
  await inClub(person.clubId, (tx) => claimAdult(tx, { personId: person.personId, loginId }))
  return loginId
}

/** Two browsers may press the button at once: one makes it, both find it. */
async function makeLoginAt(email: string, name: string): Promise<string> {
  const { internalAdapter } = await signInLibrary().$context
  try {
    return (
      await internalAdapter.createUser({ email, name, emailVerified: false }, { method: 'email-password' })
    ).id
  } catch (error) {
    const other = await internalAdapter.findUserByEmail(email)
    if (!other) throw error
    return other.user.id
  }
}
