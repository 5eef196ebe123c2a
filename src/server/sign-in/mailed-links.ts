import 'server-only'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { verifyAddress } from '#data/logins'
import { logFault } from '#server/log'
import { type Mail, sendMail } from '#server/mail'
import { placeOfRequest } from '#server/place-of-request'
import { takeTry, tooManyTries } from '#server/rate-limit'
import { findLogin, openSession } from '#server/sign-in'
import { address } from '#server/sign-in/address'
import { forgetGuesses } from '#server/sign-in/forget-guesses'
import { signInLibrary } from '#server/sign-in/library'
import { makeProof, type ProofPurpose, takeProof } from '#server/sign-in/proofs'
import { setPassword } from '#server/sign-in/with-password'

/** What a mailed link is for. */
export type MailedPurpose = Exclude<ProofPurpose, 'passkey'>

const purposes: readonly MailedPurpose[] = ['signIn', 'newPassword', 'address']

/** The last part of a mailed link, taken apart; null when it is none. Whether it opens anything is for its proof to say. */
export function partsOfMailed(
  code: string,
): { readonly purpose: MailedPurpose; readonly secret: string } | null {
  const [word, secret, ...rest] = code.split('.')
  const purpose = purposes.find((one) => one === word)
  return purpose && secret && rest.length === 0 ? { purpose, secret } : null
}

/**
 * Mails a link by which somebody signs in, or sets a new password, to an address that was shown to be its owner's. The
 * answer is the same whether there is such a sign-in or not. An address that was only typed gets none: it may be a slip,
 * and somebody else's.
 */
export async function mailLink(
  purpose: Exclude<MailedPurpose, 'address'>,
  at: { readonly email: string; readonly address: string },
): Promise<Result<null, Problem>> {
  const email = address.safeParse(at.email)
  if (!email.success) return refuse({ path: 'email', message: email.error.issues[0]?.message ?? '' })
  for (const one of [
    { what: 'mailFrom', key: await placeOfRequest() },
    { what: 'mailToAddress', key: email.data },
  ] as const) {
    const answer = await takeTry(one)
    if (!answer.ok) return refuse({ path: '', message: tooManyTries(answer.seconds) })
  }
  // Not waited for: how long it takes would tell whether there is such a sign-in.
  void sendIfVerified(purpose, { email: email.data, address: at.address }).catch((error) =>
    logFault('mail not sent', error),
  )
  return accept(null)
}

async function sendIfVerified(
  purpose: Exclude<MailedPurpose, 'address'>,
  at: { readonly email: string; readonly address: string },
): Promise<void> {
  const { internalAdapter } = await signInLibrary().$context
  const found = await internalAdapter.findUserByEmail(at.email)
  if (!found?.user.emailVerified) return
  const link = await linkOf(purpose, { value: `${found.user.id} ${at.email}`, address: at.address })
  await sendMail({ to: at.email, ...letters[purpose](link) })
}

/** Mails whoever is signed in a link that shows its address to be its own. */
export async function mailAddressLink(at: { readonly address: string }): Promise<Result<null, Problem>> {
  const login = await findLogin()
  if (!login) return refuse({ path: '', message: 'You are signed out. Sign in first.' })
  const answer = await takeTry({ what: 'mailToAddress', key: login.email })
  if (!answer.ok) return refuse({ path: '', message: tooManyTries(answer.seconds) })
  const link = await linkOf('address', { value: `${login.loginId} ${login.email}`, address: at.address })
  await sendMail({ to: login.email, ...letters.address(link) })
  return accept(null)
}

async function linkOf(
  purpose: MailedPurpose,
  { value, address: base }: { readonly value: string; readonly address: string },
): Promise<string> {
  return `${base}/verify/${purpose}.${await makeProof(purpose, { value })}`
}

const deadLink: Problem = {
  path: '',
  message:
    'This link opens nothing any more: it works once, and for a short time. Have a new one sent to you.',
}

/** Whose link it is; null when the sign-in has another address since: who reads the old one is not its owner. */
async function ownerOf(value: string | null): Promise<string | null> {
  const [loginId, email] = value?.split(' ') ?? []
  if (!loginId) return null
  const { internalAdapter } = await signInLibrary().$context
  const user = await internalAdapter.findUserById(loginId)
  return user && user.email === email ? loginId : null
}

/** Signs in by a mailed link. */
export async function signInByLink(secret: string): Promise<Result<null, Problem>> {
  const loginId = await ownerOf(await takeProof('signIn', secret))
  if (!loginId) return refuse(deadLink)
  await welcomeBack(loginId)
  return accept(null)
}

/** Sets a new password by a mailed link, and signs in with it; a weak one leaves the link good. */
export async function setPasswordByLink(at: {
  readonly secret: string
  readonly password: string
}): Promise<Result<null, Problem>> {
  const value = await takeProof('newPassword', at.secret)
  const loginId = await ownerOf(value)
  if (!value || !loginId) return refuse(deadLink)
  const done = await setPassword({ loginId, password: at.password })
  if (!done.ok) {
    await makeProof('newPassword', { value, secret: at.secret })
    return done
  }
  await welcomeBack(loginId)
  return accept(null)
}

/** Takes an address as its owner's: the link reached it, and whoever opened it is signed in with it. */
export async function verifyByLink(secret: string): Promise<Result<null, Problem>> {
  const login = await findLogin()
  if (!login) return refuse({ path: '', message: 'Sign in first, then open the link again.' })
  const [loginId, email] = (await takeProof('address', secret))?.split(' ') ?? []
  const isOwn = loginId === login.loginId && email === login.email
  return isOwn && (await verifyAddress({ loginId, email })) ? accept(null) : refuse(deadLink)
}

/** A new session; what was counted against guessing is forgotten, for the owner of the address has come. */
async function welcomeBack(loginId: string): Promise<void> {
  await forgetGuesses(loginId)
  await openSession({ loginId, as: null })
}

const letters: Readonly<Record<MailedPurpose, (link: string) => Omit<Mail, 'to'>>> = {
  signIn: (link) => ({
    subject: 'Your link to sign in',
    text: `Open this link within 15 minutes to sign in to the squad's book. It works once.\n\n${link}\n\nDid you not ask for it? Then leave it closed: nothing happens.\n`,
  }),
  newPassword: (link) => ({
    subject: 'Your link to a new password',
    text: `Open this link within 15 minutes to choose a new password for the squad's book. It works once.\n\n${link}\n\nDid you not ask for it? Then leave it closed: your old password stays.\n`,
  }),
  address: (link) => ({
    subject: 'Is this your address?',
    text: `Somebody gave this address as its own in the squad's book. If that was you, open this link within a day, in the browser in which you are signed in.\n\n${link}\n\nWas it not you? Then leave it closed.\n`,
  }),
}
