import { signedPerson } from '#server/signed-person'

const signedIn = 'turnbook'

/** Stands in for Next's request outside of Next: its cookies, one of which says who asks. */
const jar = new Map<string, string>()

/** How a cookie was set last, by its name. */
export const cookieOptions = new Map<string, Readonly<Record<string, unknown>>>()

export function askAsPerson(person: { readonly clubId: string; readonly personId: string } | null): void {
  process.env.TURNBOOK_SECRET ??= 'a secret of the tests, long enough to be one'
  process.env.TURNBOOK_DEMO ??= '1'
  jar.clear()
  if (person) jar.set(signedIn, signedPerson(person, new Date()))
}

/** What a browser would send beside who is signed in. */
export function askWithCookie(name: string, value: string): void {
  jar.set(name, value)
}

export async function cookies() {
  return {
    get: (name: string) => {
      const value = jar.get(name)
      return value === undefined ? undefined : { value }
    },
    set: (name: string, value: string, options: Readonly<Record<string, unknown>> = {}) => {
      jar.set(name, value)
      cookieOptions.set(name, options)
    },
    delete: (name: string) => {
      jar.delete(name)
    },
  }
}

/** Where a redirect led that an action threw, or null when it answered. */
export function redirectOf(error: unknown): string | null {
  const digest = error instanceof Error && 'digest' in error ? String(error.digest) : ''
  return digest.startsWith('NEXT_REDIRECT') ? (digest.split(';')[2] ?? null) : null
}
