import { type NextRequest, NextResponse } from 'next/server'
import { contentSecurityPolicy } from '#server/content-security-policy'

const nonceBytes = 16

/** Gives every page the policy of what may run in it, with a number nobody can guess. */
export function proxy(request: NextRequest): NextResponse {
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(nonceBytes))).toString('base64')
  const isHttps = process.env.TURNBOOK_URL?.startsWith('https:') ?? false
  const policy = contentSecurityPolicy({ nonce, isHttps })
  const headers = new Headers(request.headers)
  // The framework reads the number from here, and puts it on the scripts and styles that it writes.
  headers.set('content-security-policy', policy)
  const response = NextResponse.next({ request: { headers } })
  response.headers.set('content-security-policy', policy)
  return response
}

// All that is a page. What is not one has a policy of its own in next.config.js.
export const config = {
  matcher: [
    '/((?!api/|_next/static/|sw\\.js$|manifest\\.webmanifest$|icon\\.svg$|apple-icon\\.png$|icons/|pictures/|\\.well-known/).*)',
  ],
}
