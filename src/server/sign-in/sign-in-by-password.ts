import 'server-only'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { placeOfRequest } from '#server/place-of-request'
import { forgetTries, type Tried, takeTry, tooManyTries } from '#server/rate-limit'
import { openSession } from '#server/sign-in'
import { loginOfPassword } from '#server/sign-in/with-password'

/**
 * Signs this browser in by address and password. Tries are counted for the address and for the place they come from; who
 * is shut out that way still gets in by a mailed link, so nobody can be kept out by somebody who guesses.
 */
export async function signInByPassword(given: {
  readonly email: string
  readonly password: string
}): Promise<Result<null, Problem>> {
  const counted = [
    { what: 'passwordFrom', key: await placeOfRequest() },
    { what: 'passwordOfAddress', key: given.email },
    { what: 'passwordInAll', key: given.email },
  ] as const satisfies readonly { what: Tried; key: string }[]
  for (const one of counted) {
    const answer = await takeTry(one)
    if (!answer.ok) return refuse({ path: '', message: waitOrMail(answer.seconds) })
  }
  const login = await loginOfPassword(given)
  if (!login.ok) return login
  for (const one of counted.slice(1)) await forgetTries(one)
  await openSession({ loginId: login.value.loginId, as: null })
  return accept(null)
}

function waitOrMail(seconds: number): string {
  const aDay = 24 * 60 * 60
  const mail = 'A link sent to your address lets you in now.'
  return seconds > aDay
    ? `That was tried too often with this address. ${mail}`
    : `${tooManyTries(seconds)} ${mail}`
}
