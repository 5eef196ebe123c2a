import 'server-only'
import { appDatabase, type Database } from '#data/database'

/** What a sign-in has of a passkey: its name, and the public half of its key. */
export type Passkey = {
  /** Of the credential, base64url. */
  readonly id: string
  readonly loginId: string
  /** COSE. */
  readonly publicKey: Uint8Array<ArrayBuffer>
  readonly counter: number
  readonly transports: readonly string[]
  readonly isBackedUp: boolean
  readonly name: string
  readonly createdAt: Date
  readonly lastUsedAt: Date | null
}

/** The oldest first. */
export async function listPasskeysOf(
  loginId: string,
  database: Database = appDatabase(),
): Promise<readonly Passkey[]> {
  const rows = await database.passkey.findMany({
    where: { loginId },
    orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
  })
  return rows.map((row) => ({ ...row, counter: Number(row.counter) }))
}

export async function findPasskey(id: string, database: Database = appDatabase()): Promise<Passkey | null> {
  const row = await database.passkey.findUnique({ where: { id } })
  return row && { ...row, counter: Number(row.counter) }
}

/** False: there is one with this id already. */
export async function recordPasskey(
  passkey: Omit<Passkey, 'createdAt' | 'lastUsedAt'>,
  database: Database = appDatabase(),
): Promise<boolean> {
  const { count } = await database.passkey.createMany({
    data: [{ ...passkey, counter: BigInt(passkey.counter), transports: [...passkey.transports] }],
    skipDuplicates: true,
  })
  return count > 0
}

/**
 * That it was used, and how often by its own count. False: its count went back meanwhile, so that there are two of it;
 * many keep no count and say 0 each time (WebAuthn Level 3, 6.1.1).
 */
export async function countPasskeyUse(
  use: { readonly id: string; readonly counter: number; readonly at: Date },
  database: Database = appDatabase(),
): Promise<boolean> {
  const counter = BigInt(use.counter)
  const { count } = await database.passkey.updateMany({
    where: { id: use.id, OR: [{ counter: { lt: counter } }, { counter: 0 }] },
    data: { counter, lastUsedAt: use.at },
  })
  return count > 0
}

/** Of this sign-in only. */
export async function removePasskey(
  at: { readonly loginId: string; readonly passkeyId: string },
  database: Database = appDatabase(),
): Promise<boolean> {
  const { count } = await database.passkey.deleteMany({ where: { id: at.passkeyId, loginId: at.loginId } })
  return count > 0
}
