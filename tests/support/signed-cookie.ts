import { demoLoginOf } from '#server/sign-in/demo-login'
import { signInLibrary } from '#server/sign-in/library'
import { sessionCookie } from '#server/sign-in/session-cookie'

/** Signs a person of any club in, without a password, and gives what its browser would keep. */
export async function signedCookieOf(person: {
  readonly clubId: string
  readonly personId: string
}): Promise<{ readonly name: string; readonly value: string }> {
  const { clubId, personId } = person
  const { headers } = await signInLibrary().api.openSession({
    body: { loginId: await demoLoginOf(person), clubId, personId },
    headers: new Headers(),
    returnHeaders: true,
  })
  const { name } = sessionCookie()
  const [pair] = headers.getSetCookie().filter((line) => line.startsWith(`${name}=`))
  const value = pair?.slice(name.length + 1).split(';')[0]
  if (!value) throw new Error('no cookie was made')
  return { name, value: decodeURIComponent(value) }
}
