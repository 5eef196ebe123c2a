import 'server-only'
import { cookies } from 'next/headers'
import { redirect } from 'next/navigation'
import { cache } from 'react'
import type { Viewer } from '#access/viewer'
import { isDemoMode } from '#server/demo-mode'
import { findViewer } from '#server/find-viewer'
import { daysSignedIn, personOfSigned, type SignedPerson, signedPerson } from '#server/signed-person'

const cookieName = 'turnbook'

/** Who asks, or null when nobody is signed in. Read anew for every request. */
export const findSignedIn = cache(async (): Promise<Viewer | null> => {
  const cookie = (await cookies()).get(cookieName)?.value
  // Every sign-in there is so far is a demo's: where there is no demo any more, none of them holds.
  const person = cookie && isDemoMode() ? personOfSigned(cookie, new Date()) : null
  return person && findViewer(person)
})

/** Who asks; without a sign-in the request goes to the first page. */
export async function getViewer(): Promise<Viewer> {
  return (await findSignedIn()) ?? redirect('/')
}

export async function signIn(person: SignedPerson): Promise<void> {
  ;(await cookies()).set(cookieName, signedPerson(person, new Date()), {
    httpOnly: true,
    sameSite: 'lax',
    secure: process.env.TURNBOOK_URL?.startsWith('https:') ?? false,
    path: '/',
    maxAge: daysSignedIn * 24 * 60 * 60,
  })
}

export async function signOut(): Promise<void> {
  ;(await cookies()).delete(cookieName)
}
