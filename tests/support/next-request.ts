import { signedCookieOf } from './signed-cookie'

type Person = { readonly clubId: string; readonly personId: string }

/** Stands in for Next's request outside of Next: its cookies, one of which says who asks. */
const jar = new Map<string, string>()

/** How a cookie was set last, by its name. */
export const cookieOptions = new Map<string, Readonly<Record<string, unknown>>>()

/** Who is to be signed in by the time the cookies are read; a test may ask as many that never read them. */
let asked: Person | null = null

export function askAsPerson(person: Person | null): void {
  process.env.TURNBOOK_SECRET ??= 'a secret of the tests, long enough to be one'
  process.env.TURNBOOK_DEMO ??= '1'
  jar.clear()
  asked = person
  taking = Promise.resolve()
}

/** One sign-in for one person in a test file, however often it asks. */
const signedIn = new Map<string, ReturnType<typeof signedCookieOf>>()

/** Several questions at once wait for the one cookie. */
let taking: Promise<void> = Promise.resolve()

function takeCookie(): Promise<void> {
  const person = asked
  asked = null
  if (person) taking = keepCookieOf(person)
  return taking
}

async function keepCookieOf({ clubId, personId }: Person): Promise<void> {
  const known = signedIn.get(personId) ?? signedCookieOf({ clubId, personId })
  signedIn.set(personId, known)
  const { name, value } = await known
  jar.set(name, value)
}

export async function headers() {
  return new Headers()
}

/** What a browser would send beside who is signed in. */
export function askWithCookie(name: string, value: string): void {
  jar.set(name, value)
}

export async function cookies() {
  await takeCookie()
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
