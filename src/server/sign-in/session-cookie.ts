import 'server-only'
import { longestSessionSeconds } from '#access/session-limits'

/** Whether the pages are reached by https, as TURNBOOK_URL says. */
export function isHttps(): boolean {
  return process.env.TURNBOOK_URL?.startsWith('https:') ?? false
}

/**
 * The cookie that a browser keeps. With the prefix `__Host-` a browser takes it from this very host and over https only
 * (RFC 6265bis, 4.1.3.2); without https no browser would keep it.
 */
export function sessionCookie() {
  return {
    name: isHttps() ? '__Host-turnbook' : 'turnbook',
    attributes: {
      httpOnly: true,
      sameSite: 'lax',
      secure: isHttps(),
      path: '/',
      maxAge: longestSessionSeconds,
    },
  } as const
}
