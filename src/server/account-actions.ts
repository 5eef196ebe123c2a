'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { refuse } from '#common/result'
import { endSession } from '#data/login-sessions'
import { saved } from '#server/action'
import { readForm } from '#server/form'
import { openAction } from '#server/open-action'
import { forgetTries, takeTry, tooManyTries } from '#server/rate-limit'
import { addressOfRequest } from '#server/request-address'
import { endSessionsOf, findLogin } from '#server/sign-in'
import { changeAddressOf } from '#server/sign-in/change-address'
import { mailAddressLink } from '#server/sign-in/mailed-links'
import { loginOfPassword, setPassword } from '#server/sign-in/with-password'

const password = z.string().max(1000)
const signedOut = { path: '', message: 'You are signed out. Sign in first.' }

/** A new password for who knows the old one; every other browser is signed out. */
export const changeOwnPassword = openAction(
  z.object({ oldPassword: password, password }),
  async ({ oldPassword, password }) => {
    const login = await findLogin()
    if (!login) return refuse(signedOut)
    const tried = { what: 'passwordOfAddress', key: login.email } as const
    const answer = await takeTry(tried)
    if (!answer.ok) return refuse({ path: '', message: tooManyTries(answer.seconds) })
    const known = await loginOfPassword({ email: login.email, password: oldPassword })
    if (!known.ok)
      return refuse({ path: 'oldPassword', message: 'This is not your password as it stands now.' })
    await forgetTries(tried)
    const done = await setPassword({ loginId: login.loginId, password, except: login.sessionId })
    return done.ok
      ? saved('Your new password holds from now on. Wherever else you were signed in, you are signed out.')
      : done
  },
)

/** Has a link sent that shows the address to be one's own. */
export const askToConfirmAddress = openAction(z.object({}), async () => {
  if (!(await findLogin())) return refuse(signedOut)
  const sent = await mailAddressLink({ address: await addressOfRequest() })
  return sent.ok ? saved('A mail is on its way to you. Open its link in this browser within a day.') : sent
})

/** Another address for one's own sign-in, soon after signing in: not yet shown to be one's own. */
export const changeOwnAddress = openAction(z.object({ email: z.string().max(300) }), async ({ email }) => {
  const login = await findLogin()
  if (!login) return refuse(signedOut)
  const done = await changeAddressOf(login, { email, now: new Date() })
  if (!done.ok) return done
  const sent = await mailAddressLink({ address: await addressOfRequest() })
  const mail = sent.ok
    ? 'A mail is on its way there: open its link in this browser.'
    : 'No mail was sent this time: ask for one below, to show that it is yours.'
  return saved(`Sign in with your new address from now on; elsewhere you are signed out. ${mail}`)
})

/** Signs one other browser out; of somebody else's there is none to be found. */
export async function endOwnSession(form: FormData): Promise<void> {
  const fields = readForm(form)
  const asked = z.object({ sessionId: z.uuid() }).safeParse(fields.ok ? fields.value : null)
  const login = await findLogin()
  if (!login) redirect('/sign-in')
  if (asked.success) await endSession({ loginId: login.loginId, sessionId: asked.data.sessionId })
  redirect('/account')
}

export async function endOtherSessions(): Promise<void> {
  const login = await findLogin()
  if (!login) redirect('/sign-in')
  await endSessionsOf({ loginId: login.loginId, except: login.sessionId })
  redirect('/account')
}
