import 'server-only'
import { cookies } from 'next/headers'
import { unsign } from '#server/sign'

const freshMinutes = 15

/** Whether who asks has signed in within the last quarter of an hour: for what cannot be undone. */
export async function isSignInFresh(now = new Date()): Promise<boolean> {
  const cookie = (await cookies()).get('turnbook')?.value
  const at = Number(cookie && unsign(cookie)?.split('/')[2])
  return now.getTime() - at < freshMinutes * 60_000
}
