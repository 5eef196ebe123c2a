import 'server-only'
import {
  type AuthenticationResponseJSON,
  generateAuthenticationOptions,
  generateRegistrationOptions,
  type RegistrationResponseJSON,
  verifyAuthenticationResponse,
  verifyRegistrationResponse,
} from '@simplewebauthn/server'
import { isSignInFresh } from '#access/session-limits'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { countPasskeyUse, findPasskey, listPasskeysOf, recordPasskey } from '#data/passkeys'
import { placeOfRequest } from '#server/place-of-request'
import { takeTry, tooManyTries } from '#server/rate-limit'
import { addressOfRequest } from '#server/request-address'
import { openSession, type SignedLogin } from '#server/sign-in'
import { makeProof, takeProof } from '#server/sign-in/proofs'
import { signInAgain } from '#server/sign-in/sign-in-again'

/** More than anybody has devices. */
const mostPasskeys = 10

type Options = Readonly<Record<string, unknown>>

/** Who the browser is told asks, and from which address its answer must come. */
async function relyingParty() {
  const origin = process.env.TURNBOOK_URL
    ? new URL(process.env.TURNBOOK_URL).origin
    : await addressOfRequest()
  return { origin, id: new URL(origin).hostname }
}

/** What a browser needs to make a passkey for who is signed in; good for some minutes, once. */
export async function offerPasskey(login: SignedLogin, now: Date): Promise<Result<Options, Problem>> {
  if (!isSignInFresh(login.signedInAt, now)) return refuse(signInAgain)
  const own = await listPasskeysOf(login.loginId)
  if (own.length >= mostPasskeys) return refuse(noRoom)
  const party = await relyingParty()
  const options = await generateRegistrationOptions({
    rpName: 'Turnbook',
    rpID: party.id,
    userID: new TextEncoder().encode(login.loginId),
    userName: login.email,
    userDisplayName: login.name,
    attestationType: 'none',
    excludeCredentials: own.map(({ id }) => ({ id })),
    authenticatorSelection: { residentKey: 'required', userVerification: 'required' },
  })
  await makeProof('passkey', { value: `make ${login.loginId}`, secret: options.challenge })
  return accept({ ...options })
}

const noRoom: Problem = {
  path: '',
  message: `There is room for ${mostPasskeys} passkeys. Take one away first.`,
}
const notTaken: Problem = {
  path: '',
  message:
    'This passkey was not taken: it was asked for too long ago, or comes from another place. Try again.',
}

/** Keeps the passkey that a browser has made. */
export async function keepPasskey(
  login: SignedLogin,
  made: { readonly answer: RegistrationResponseJSON; readonly name: string },
): Promise<Result<null, Problem>> {
  const challenge = challengeOf(made.answer.response.clientDataJSON)
  if (!challenge || (await takeProof('passkey', challenge)) !== `make ${login.loginId}`)
    return refuse(notTaken)
  const party = await relyingParty()
  const { verified, registrationInfo } = await verifyRegistrationResponse({
    response: made.answer,
    expectedChallenge: challenge,
    expectedOrigin: party.origin,
    expectedRPID: party.id,
    requireUserVerification: true,
  }).catch(() => ({ verified: false as const, registrationInfo: undefined }))
  if (!verified || !registrationInfo) return refuse(notTaken)
  const { credential, credentialBackedUp } = registrationInfo
  if ((await listPasskeysOf(login.loginId)).length >= mostPasskeys) return refuse(noRoom)
  const isNew = await recordPasskey({
    id: credential.id,
    loginId: login.loginId,
    publicKey: credential.publicKey,
    counter: credential.counter,
    transports: credential.transports ?? [],
    isBackedUp: credentialBackedUp,
    name: made.name,
  })
  return isNew ? accept(null) : refuse(notTaken)
}

/** What a browser needs to sign in with a passkey, whoever it is; good for some minutes, once. */
export async function askForPasskey(): Promise<Result<Options, Problem>> {
  const answer = await takeTry({ what: 'passkeyFrom', key: await placeOfRequest() })
  if (!answer.ok) return refuse({ path: '', message: tooManyTries(answer.seconds) })
  const options = await generateAuthenticationOptions({
    rpID: (await relyingParty()).id,
    userVerification: 'required',
  })
  await makeProof('passkey', { value: 'sign in', secret: options.challenge })
  return accept({ ...options })
}

/** Signs in whoever's passkey it is. */
export async function signInByPasskey(
  answer: AuthenticationResponseJSON,
  now: Date,
): Promise<Result<null, Problem>> {
  const challenge = challengeOf(answer.response.clientDataJSON)
  if (!challenge || (await takeProof('passkey', challenge)) !== 'sign in') return refuse(unknown)
  const passkey = await findPasskey(answer.id)
  if (!passkey || !isOwnersAnswer(answer, passkey.loginId)) return refuse(unknown)
  const party = await relyingParty()
  const { verified, authenticationInfo } = await verifyAuthenticationResponse({
    response: answer,
    expectedChallenge: challenge,
    expectedOrigin: party.origin,
    expectedRPID: party.id,
    requireUserVerification: true,
    credential: { id: passkey.id, publicKey: passkey.publicKey, counter: passkey.counter },
  }).catch(() => ({ verified: false as const, authenticationInfo: undefined }))
  if (!verified || !authenticationInfo) return refuse(unknown)
  const use = { id: passkey.id, counter: authenticationInfo.newCounter, at: now }
  if (!(await countPasskeyUse(use))) return refuse(unknown)
  await openSession({ loginId: passkey.loginId, as: null })
  return accept(null)
}

const unknown: Problem = {
  path: '',
  message: 'No sign-in here knows this passkey. Sign in with your address, and look under "Your sign-in".',
}

/** A device that says whose passkey it is says so of its owner (WebAuthn Level 3, 7.2, step 6; from memory). */
function isOwnersAnswer({ response }: AuthenticationResponseJSON, loginId: string): boolean {
  const { userHandle } = response
  return !userHandle || Buffer.from(userHandle, 'base64url').toString('utf8') === loginId
}

/** The challenge that a browser says it answers; whether it is one of ours is for its proof to say. */
function challengeOf(clientDataJSON: string): string | null {
  try {
    const data: unknown = JSON.parse(Buffer.from(clientDataJSON, 'base64url').toString('utf8'))
    const challenge = data instanceof Object && 'challenge' in data ? data.challenge : null
    return typeof challenge === 'string' ? challenge : null
  } catch {
    return null
  }
}
