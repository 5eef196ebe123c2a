import 'server-only'
import { AppError } from '#common/app-error'
import { Prisma } from '#data/generated/client'

/** Unique key, write conflict or deadlock, by Prisma's own codes. */
const prismaCodes = new Set(['P2002', 'P2034'])

/** Exclusion constraint, serialization failure, deadlock, unique key: PostgreSQL's codes, Appendix A of its manual. */
const postgresCodes = new Set(['23P01', '40001', '40P01', '23505'])

/** The error as a conflict with what somebody else wrote meanwhile, or null when it is none. */
export function conflictOf(error: unknown): AppError | null {
  if (error instanceof Prisma.PrismaClientKnownRequestError && prismaCodes.has(error.code)) {
    return new AppError('conflict', `${error.code} on ${error.meta?.modelName ?? 'a table'}`)
  }
  const code = postgresCodeOf(error)
  return code && postgresCodes.has(code) ? new AppError('conflict', `PostgreSQL ${code}`) : null
}

/** The SQLSTATE of a failed statement, wherever in the chain of causes it stands; null when the database did not fail. */
export function postgresCodeOf(error: unknown): string | null {
  for (let at = error, depth = 0; at instanceof Object && depth < 6; depth += 1) {
    const { originalCode, code, cause, meta, driverAdapterError } = at as Readonly<Record<string, unknown>>
    const found = [originalCode, code].find((text) => typeof text === 'string' && /^[0-9A-Z]{5}$/.test(text))
    if (typeof found === 'string' && !/^P[1-6]\d{3}$/.test(found)) return found
    at = cause ?? driverAdapterError ?? meta
  }
  return null
}
