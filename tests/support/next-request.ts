import { signedPerson } from '#server/signed-person'

/** Stands in for Next's request outside of Next: one cookie, which says who asks. */
let cookie: string | null = null

export function askAsPerson(person: { readonly clubId: string; readonly personId: string } | null): void {
  process.env.TURNBOOK_SECRET ??= 'a secret of the tests, long enough to be one'
  process.env.TURNBOOK_DEMO ??= '1'
  cookie = person && signedPerson(person, new Date())
}

export async function cookies() {
  return {
    get: () => (cookie === null ? undefined : { value: cookie }),
    set: (_name: string, value: string) => {
      cookie = value
    },
    delete: () => {
      cookie = null
    },
  }
}

/** Where a redirect led that an action threw, or null when it answered. */
export function redirectOf(error: unknown): string | null {
  const digest = error instanceof Error && 'digest' in error ? String(error.digest) : ''
  return digest.startsWith('NEXT_REDIRECT') ? (digest.split(';')[2] ?? null) : null
}
