import 'server-only'
import { randomBytes } from 'node:crypto'
import { signInLibrary } from '#server/sign-in/library'

/** What something that comes back once is for. One made for one thing opens no other. */
export type ProofPurpose = 'signIn' | 'newPassword' | 'address' | 'passkey'

const minutesOf = { signIn: 15, newPassword: 15, address: 24 * 60, passkey: 5 } as const satisfies Record<
  ProofPurpose,
  number
>

const nameOf = (purpose: ProofPurpose, secret: string) => `${purpose}:${secret}`

/** Makes a secret that is good once, for some minutes. The database has its hash and what it stands for. */
export async function makeProof(
  purpose: ProofPurpose,
  {
    value,
    secret = randomBytes(32).toString('base64url'),
  }: { readonly value: string; readonly secret?: string },
): Promise<string> {
  const { internalAdapter } = await signInLibrary().$context
  await internalAdapter.createVerificationValue({
    identifier: nameOf(purpose, secret),
    value,
    expiresAt: new Date(Date.now() + minutesOf[purpose] * 60_000),
  })
  return secret
}

/** What the secret stands for, once; null ever after, when its time is over, and when there never was one. */
export async function takeProof(purpose: ProofPurpose, secret: string): Promise<string | null> {
  const { internalAdapter } = await signInLibrary().$context
  const proof = await internalAdapter.consumeVerificationValue(nameOf(purpose, secret))
  return proof && proof.expiresAt > new Date() ? proof.value : null
}
