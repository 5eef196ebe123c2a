'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { setSessionPerson } from '#data/login-sessions'
import { listDemoPeople } from '#data/people'
import { type Done, goTo, saved } from '#server/action'
import { isDemoMode } from '#server/demo-mode'
import { findViewer } from '#server/find-viewer'
import { readForm } from '#server/form'
import { homeOf } from '#server/home-of'
import { openAction } from '#server/open-action'
import { isOwnMachine } from '#server/own-machine'
import { addressOfRequest } from '#server/request-address'
import { findLogin, leaveSession, openSession } from '#server/sign-in'
import { demoLoginOf } from '#server/sign-in/demo-login'
import { mailLink, setPasswordByLink, signInByLink, verifyByLink } from '#server/sign-in/mailed-links'
import { signInByPassword } from '#server/sign-in/sign-in-by-password'
import { findSignedIn } from '#server/viewer'

const person = z.object({ clubId: z.uuid(), personId: z.uuid() })
const text = (most: number) => z.string().max(most)
const email = text(300).transform((typed) => typed.trim().toLowerCase())
const code = text(200)

/** Signs in as somebody of a demo club, and only in demo mode: anything else leads back to the first page. */
export async function signInToDemo(form: FormData): Promise<void> {
  const fields = readForm(form)
  const asked = person.safeParse(fields.ok ? fields.value : null)
  if (!isDemoMode() || !asked.success) redirect('/')
  const { clubId, personId } = asked.data
  const isOffered = (await listDemoPeople()).some((one) => one.clubId === clubId && one.id === personId)
  const viewer = isOffered ? await findViewer(asked.data) : null
  if (!viewer) redirect('/')
  await openSession({ loginId: await demoLoginOf(asked.data), as: asked.data })
  redirect(homeOf(viewer) ?? '/')
}

export async function leave(): Promise<void> {
  await leaveSession()
  redirect('/')
}

/** Address and password. */
export const signInWithPassword = openAction(z.object({ email, password: text(1000) }), async (given) =>
  thenHome(await signInByPassword(given)),
)

/** Has a link sent that signs in; the same answer for every address. */
export const askForSignInLink = openAction(z.object({ email }), async (given) =>
  thenLookAtMail(await mailLinkFromHere('signIn', given.email)),
)

/** Has a link sent that leads to a new password; the same answer for every address. */
export const askForNewPassword = openAction(z.object({ email }), async (given) =>
  thenLookAtMail(await mailLinkFromHere('newPassword', given.email)),
)

export const signInWithLink = openAction(z.object({ code }), async (given) =>
  thenHome(await signInByLink(given.code)),
)

export const setNewPassword = openAction(z.object({ code, password: text(1000) }), async (given) =>
  thenHome(await setPasswordByLink({ secret: given.code, password: given.password })),
)

export const verifyOwnAddress = openAction(z.object({ code }), async (given) => {
  const done = await verifyByLink(given.code)
  return done.ok ? goTo('/account') : done
})

/** Which of the viewer's own people looks at which club from here on; anything else leads back to the first page. */
export async function chooseOwnPerson(form: FormData): Promise<void> {
  const fields = readForm(form)
  const asked = person.safeParse(fields.ok ? fields.value : null)
  const login = await findLogin()
  if (!login || !asked.success) redirect('/')
  const own = login.people.find(
    ({ clubId, personId }) => clubId === asked.data.clubId && personId === asked.data.personId,
  )
  if (!own) redirect('/')
  await setSessionPerson(login.sessionId, own)
  const viewer = await findViewer(own)
  redirect((viewer && homeOf(viewer)) ?? '/')
}

/**
 * Anybody may ask, and may write any name of this book into what is asked: a mailed link made from it would carry what
 * opens the sign-in to a stranger. So none is made but under the address of the settings, or of this machine.
 */
async function mailLinkFromHere(
  purpose: Parameters<typeof mailLink>[0],
  email: string,
): Promise<Result<null, Problem>> {
  const address = await addressOfRequest()
  const isOurs = Boolean(process.env.TURNBOOK_URL) || isOwnMachine(address)
  return isOurs ? mailLink(purpose, { email, address }) : refuse({ path: '', message: addressNotSet })
}

const addressNotSet =
  'No mail was sent: this book was never told the address it is reached under. Whoever looks after it can set that; the administrator of your club can give you a link meanwhile.'

async function thenHome(done: Result<null, Problem>): Promise<Result<Done, Problem>> {
  if (!done.ok) return done
  const viewer = await findSignedIn()
  return goTo((viewer && homeOf(viewer)) ?? '/')
}

function thenLookAtMail(done: Result<null, Problem>): Result<Done, Problem> {
  return done.ok
    ? saved(
        'If there is a sign-in with this address, a link is on its way to it. Look at your mail, and in the folder for junk.',
      )
    : done
}
