import 'server-only'
import { cookies } from 'next/headers'
import { redirect } from 'next/navigation'
import { cache } from 'react'
import type { Viewer } from '#access/viewer'
import { findViewer } from '#server/find-viewer'
import { sign, unsign } from '#server/sign'

const cookieName = 'turnbook'
const monthInSeconds = 30 * 24 * 60 * 60

/** Who asks, or null when nobody is signed in. Read anew for every request. */
export const findSignedIn = cache(async (): Promise<Viewer | null> => {
  const cookie = (await cookies()).get(cookieName)?.value
  const text = cookie ? unsign(cookie) : null
  const [clubId, personId] = text?.split('/') ?? []
  return clubId && personId ? findViewer({ clubId, personId }) : null
})

/** Who asks; without a sign-in the request goes to the first page. */
export async function getViewer(): Promise<Viewer> {
  return (await findSignedIn()) ?? redirect('/')
}

export async function signIn(person: { clubId: string; personId: string }): Promise<void> {
  ;(await cookies()).set(cookieName, sign(`${person.clubId}/${person.personId}`), {
    httpOnly: true,
    sameSite: 'lax',
    secure: process.env.TURNBOOK_URL?.startsWith('https:') ?? false,
    path: '/',
    maxAge: monthInSeconds,
  })
}

export async function signOut(): Promise<void> {
  ;(await cookies()).delete(cookieName)
}
