import 'server-only'
import { getClub } from '#data/clubs'
import { inClub } from '#data/in-club'
import type { LinkKind } from '#data/one-time-links'
import { findLogin } from '#server/sign-in'
import { findGoodLink } from '#server/spend-link'
import { readWelcome } from '#server/welcome-cookie'

/** What whoever opened a link is told before anything happens: whose club it is, and what the button does. No name of a child. */
export type Welcome = {
  readonly clubName: string
  readonly kind: LinkKind
  /** Who is signed in here, by name and address; null: nobody is. */
  readonly signedInAs: string | null
  /** The person has a sign-in already: another is not made. */
  readonly hasSignIn: boolean
}

/** Null: the link opens nothing, whatever the reason. Changes nothing. */
export async function loadWelcome(now = new Date()): Promise<Welcome | null> {
  const code = await readWelcome()
  if (!code) return null
  const login = await findLogin()
  return inClub(code.clubId, async (tx) => {
    const good = await findGoodLink(tx, code, now)
    if (!good) return null
    return {
      clubName: (await getClub(tx)).name,
      kind: good.link.kind,
      signedInAs: login && whoIs(login),
      hasSignIn: good.person.loginId !== null,
    }
  })
}

/** Somebody with two sign-ins tells them apart by the address; a demo's people have none that anybody knows. */
function whoIs({ name, email }: { readonly name: string; readonly email: string }): string {
  return email.endsWith('@demo.invalid') ? name : `${name} (${email})`
}
