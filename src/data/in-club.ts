import 'server-only'
import { AppError } from '#common/app-error'
import { conflictOf } from '#data/conflict'
import { appDatabase, type Database } from '#data/database'
import type { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'

/** One transaction inside one club: nothing of another club can be read or written through it. */
export type ClubTx = { readonly clubId: string; readonly db: Prisma.TransactionClient }

type Options = {
  /** The app's own unless given. */
  readonly database?: Database
  /** The transaction is undone when it takes longer; imports take longer than pages. */
  readonly timeoutMs?: number
  /** Serves this guardian: the database then shows its own children and lets it write next to nothing. */
  readonly guardianId?: string | null
}

const pageTimeoutMs = 15_000
const waitForConnectionMs = 10_000

/**
 * Runs `work` in one transaction that sees only the club. All of it is kept, or, when it throws, nothing. Inside, use
 * `tx` for everything: another connection would know no club, and could wait for this one for ever.
 * @throws AppError `notFound` for what cannot be a club's id; `conflict` when somebody else wrote the same meanwhile.
 */
export async function inClub<Answer>(
  clubId: string,
  work: (tx: ClubTx) => Promise<Answer>,
  { database = appDatabase(), timeoutMs = pageTimeoutMs, guardianId = null }: Options = {},
): Promise<Answer> {
  if (!isId(clubId)) throw new AppError('notFound', `no club ${clubId}`)
  try {
    return await database.$transaction(
      async (db) => {
        // Third argument true: for this transaction only. Otherwise the next user of the connection would inherit the club.
        await db.$queryRaw`select set_config('app.club_id', ${clubId}, true),
          set_config('app.guardian_id', ${guardianId ?? ''}, true)`
        return work({ clubId, db })
      },
      { timeout: timeoutMs, maxWait: waitForConnectionMs },
    )
  } catch (error) {
    throw conflictOf(error) ?? error
  }
}
