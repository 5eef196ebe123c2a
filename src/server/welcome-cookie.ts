import 'server-only'
import { cookies } from 'next/headers'
import { codeOfText, type LinkCode } from '#server/link-code'
import { isHttps } from '#server/sign-in/session-cookie'

/** Time enough to sign in, or to read a mail that shows an address to be one's own. */
const minutes = 30

/** Holds the code of a link from its address on to the button, so that it stands in no history, log or referrer. */
export function welcomeCookie() {
  return {
    name: isHttps() ? '__Host-turnbook-welcome' : 'turnbook-welcome',
    // Lax: whoever comes from a mail is led on to the next page, and the cookie must come along.
    attributes: {
      httpOnly: true,
      sameSite: 'lax',
      secure: isHttps(),
      path: '/',
      maxAge: minutes * 60,
    },
  } as const
}

/** The code of the link that this browser opened last; null: none, or what is none. */
export async function readWelcome(): Promise<LinkCode | null> {
  return codeOfText((await cookies()).get(welcomeCookie().name)?.value ?? '')
}

export async function dropWelcome(): Promise<void> {
  ;(await cookies()).delete(welcomeCookie().name)
}
