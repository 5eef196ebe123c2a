'use server'

import { z } from 'zod'
import { addressOfRequest } from '#server/request-address'
import { recoverOf, signInOnTheWayOf, takeAsSignedInOf, takeWithNewSignInOf } from '#server/welcome-deeds'
import { welcomeDoor } from '#server/welcome-door'

const signIn = z.object({
  email: z
    .string('write your e-mail address')
    .max(300, 'is no e-mail address; it is too long')
    .transform((typed) => typed.trim().toLowerCase()),
  password: z.string('write a password').max(1000, 'can be 256 letters at most'),
})

/** Whoever is signed in takes what the link gives. */
export const takeAsSignedIn = welcomeDoor(z.object({}), (code) => takeAsSignedInOf(code))

/** Whoever has no sign-in chooses one, and takes with it what the link gives. */
export const takeWithNewSignIn = welcomeDoor(signIn, async (code, input) =>
  takeWithNewSignInOf(code, { ...input, address: await addressOfRequest() }),
)

/** Whoever has a sign-in signs in on the way; the link is kept for the page that comes back. */
export const signInOnTheWay = welcomeDoor(signIn, (_code, input) => signInOnTheWayOf(input))

/** A new password for who has lost the old one. */
export const chooseNewPassword = welcomeDoor(signIn.pick({ password: true }), (code, input) =>
  recoverOf(code, input),
)
