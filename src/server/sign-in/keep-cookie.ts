import 'server-only'
import { parseSetCookieHeader } from 'better-auth/cookies'
import { cookies } from 'next/headers'
import { sessionCookie } from '#server/sign-in/session-cookie'

/** Gives the browser the cookie that the library has made. */
export async function keepCookie(headers: Headers): Promise<void> {
  const { name, attributes } = sessionCookie()
  const value = parseSetCookieHeader(headers.getSetCookie().join(', ')).get(name)?.value
  if (!value) throw new Error('the library made no cookie')
  ;(await cookies()).set(name, decodeURIComponent(value), attributes)
}

/** The cookie as the library reads it; null when the browser sent none. */
export async function cookieHeaders(): Promise<Headers | null> {
  const { name } = sessionCookie()
  const value = (await cookies()).get(name)?.value
  return value ? new Headers({ cookie: `${name}=${encodeURIComponent(value)}` }) : null
}

export async function dropCookie(): Promise<void> {
  const { name, attributes } = sessionCookie()
  ;(await cookies()).set(name, '', { ...attributes, maxAge: 0 })
}
