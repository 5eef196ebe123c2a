import 'server-only'
import { createHash } from 'node:crypto'
import type { BetterAuthOptions } from 'better-auth'
import { prismaAdapter } from 'better-auth/adapters/prisma'
import { appDatabase, type Database } from '#data/database'

type Store = ReturnType<ReturnType<typeof prismaAdapter>>
type Where = NonNullable<Parameters<Store['findOne']>[0]['where']>

/** What the library's tables are called here, and their columns where they differ. */
export const signInTables = {
  user: { modelName: 'login' },
  session: { modelName: 'loginSession', fields: { userId: 'loginId' } },
  account: { modelName: 'loginMethod', fields: { userId: 'loginId' } },
  verification: { modelName: 'loginProof' },
} as const

/**
 * The library's tables in our database. Of a session's token only the SHA-256 reaches it: who reads the table can sign
 * in as nobody. The library itself would keep it as it is.
 */
export function signInStore(database: Database = appDatabase()) {
  const plain = prismaAdapter(database, { provider: 'postgresql' })
  return (options: BetterAuthOptions): Store => withHashedTokens(plain(options))
}

/** What is kept of a session's token: SHA-256, as 64 hexadecimal digits. */
export function hashOfToken(token: string): string {
  return createHash('sha256').update(token).digest('hex')
}

function withHashedTokens(store: Store): Store {
  const isSession = (model: string) => model === 'session' || model === signInTables.session.modelName
  const hashed = <Given extends { model: string; where?: Where }>(given: Given): Given =>
    isSession(given.model) && given.where ? { ...given, where: given.where.map(hashedCondition) } : given
  return {
    ...store,
    async create(given) {
      if (!isSession(given.model) || !('token' in given.data)) return store.create(given)
      const token = String(given.data.token)
      const row = await store.create({ ...given, data: { ...given.data, token: hashOfToken(token) } })
      // Who made it is the only one who ever learns it.
      return { ...(row as object), token } as never
    },
    findOne: async (given) => backToPlain(await store.findOne(hashed(given)), given) as never,
    findMany: (given) => store.findMany(hashed(given)),
    count: (given) => store.count(hashed(given)),
    update: (given) => store.update(hashed(given)),
    updateMany: (given) => store.updateMany(hashed(given)),
    delete: (given) => store.delete(hashed(given)),
    deleteMany: (given) => store.deleteMany(hashed(given)),
    transaction: (work) => store.transaction((inner) => work(withHashedTokens(inner as Store))),
  }
}

function hashedCondition(condition: Where[number]): Where[number] {
  if (condition.field !== 'token') return condition
  const { value } = condition
  return {
    ...condition,
    value: Array.isArray(value) ? value.map((one) => hashOfToken(String(one))) : hashOfToken(String(value)),
  }
}

/** A row found by its token has that token again. */
function backToPlain(row: unknown, { where }: { readonly where: Where }): unknown {
  const token = where.find(({ field }) => field === 'token')?.value
  return row && typeof token === 'string' && typeof row === 'object' && 'token' in row
    ? { ...row, token }
    : row
}
