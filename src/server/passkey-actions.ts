'use server'

import type { AuthenticationResponseJSON, RegistrationResponseJSON } from '@simplewebauthn/server'
import { z } from 'zod'
import { isSignInFresh } from '#access/session-limits'
import { refuse } from '#common/result'
import { removePasskey } from '#data/passkeys'
import { goTo, saved } from '#server/action'
import { readForm } from '#server/form'
import { homeOf } from '#server/home-of'
import { openAction } from '#server/open-action'
import { findLogin } from '#server/sign-in'
import { askForPasskey, keepPasskey, offerPasskey, signInByPasskey } from '#server/sign-in/passkeys'
import { signInAgain } from '#server/sign-in/sign-in-again'
import { findSignedIn } from '#server/viewer'

/** What the browser is asked, or why it is not. */
export type PasskeyQuestion =
  | { readonly ok: true; readonly options: Readonly<Record<string, unknown>> }
  | { readonly ok: false; readonly why: string }

const signedOut = { path: '', message: 'You are signed out. Sign in first.' }
const text = z.string().max(20_000)

/** The answers of a browser as it writes them down (WebAuthn Level 3, 5.1: toJSON); the library looks at them closely. */
const made = z.looseObject({
  ...{ id: text, rawId: text, type: z.literal('public-key') },
  response: z.looseObject({ clientDataJSON: text, attestationObject: text }),
})
const used = z.looseObject({
  ...{ id: text, rawId: text, type: z.literal('public-key') },
  response: z.looseObject({ clientDataJSON: text, authenticatorData: text, signature: text }),
})
const jsonOf = <Shape extends z.ZodType>(shape: Shape) =>
  text.transform((sent, context) => {
    try {
      const read = shape.safeParse(JSON.parse(sent))
      if (read.success) return read.data
    } catch {
      // Said below.
    }
    context.addIssue({ code: 'custom', message: 'is not what a browser says of a passkey; try again' })
    return z.NEVER
  })

/** Asks who is signed in for a new passkey. */
export async function offerOwnPasskey(form: FormData): Promise<PasskeyQuestion> {
  const login = readForm(form).ok ? await findLogin() : null
  return questionOf(login ? await offerPasskey(login, new Date()) : refuse(signedOut))
}

/** Keeps a passkey for who is signed in. */
export const keepOwnPasskey = openAction(
  z.object({
    answer: jsonOf(made),
    name: z.string().trim().min(1, 'write a name, such as "my phone"').max(80, 'has 80 letters at most'),
  }),
  async ({ answer, name }) => {
    const login = await findLogin()
    if (!login) return refuse(signedOut)
    const done = await keepPasskey(login, { answer: answer as unknown as RegistrationResponseJSON, name })
    return done.ok ? saved('From now on this passkey signs you in.') : done
  },
)

/** Takes one of one's own passkeys away, soon after signing in. */
export const removeOwnPasskey = openAction(z.object({ passkeyId: z.string().max(1400) }), async (asked) => {
  const login = await findLogin()
  if (!login) return refuse(signedOut)
  if (!isSignInFresh(login.signedInAt, new Date())) return refuse(signInAgain)
  const isGone = await removePasskey({ loginId: login.loginId, passkeyId: asked.passkeyId })
  return isGone ? goTo('/account') : refuse({ path: '', message: 'This passkey is no longer there.' })
})

/** Asks whoever it is for a passkey. */
export async function askForAnyPasskey(form: FormData): Promise<PasskeyQuestion> {
  if (!readForm(form).ok) return { ok: false, why: 'Reload the page and try again.' }
  return questionOf(await askForPasskey())
}

export const signInWithPasskey = openAction(z.object({ answer: jsonOf(used) }), async ({ answer }) => {
  const done = await signInByPasskey(answer as unknown as AuthenticationResponseJSON, new Date())
  if (!done.ok) return done
  const viewer = await findSignedIn()
  return goTo((viewer && homeOf(viewer)) ?? '/')
})

function questionOf(asked: Awaited<ReturnType<typeof askForPasskey>>): PasskeyQuestion {
  return asked.ok
    ? { ok: true, options: asked.value }
    : { ok: false, why: asked.reasons.map(({ message }) => message).join(' ') }
}
