import 'server-only'
import { getClub, listClubIds } from '#data/clubs'
import type { Database } from '#data/database'
import { inClub } from '#data/in-club'
import { listSeasons } from '#data/seasons'
import { listSquads } from '#data/squads'
import { rebuildSquad } from '#server/rebuild'
import { refreshFlags } from '#server/refresh-flags'
import { todayOf } from '#server/today'
import type { Squad } from '#squad/squad'

/** A squad that is done: its sessions rebuilt, or what stopped it; then everything of that squad is as it was. */
export type RebuiltSquad = {
  readonly clubName: string
  readonly squadName: string
  readonly done: number
  readonly of: number
} & ({ readonly sessions: number } | { readonly fault: Error })

const squadTimeoutMs = 10 * 60_000

/**
 * Rebuilds the accounts of every squad of every club from what was written, and judges their seasons anew. Each squad
 * is one transaction: stopped half-way, the squads that are done stay done and the one at hand is as it was.
 */
export async function* rebuildEverything(at: {
  /** By the owner of the tables, to know which clubs there are. */
  readonly owner: Database
  /** As the app, inside one club at a time. */
  readonly database: Database
  readonly now: Date
}): AsyncGenerator<RebuiltSquad> {
  const { owner, database, now } = at
  const clubs = []
  for (const clubId of await listClubIds(owner)) {
    const [club, squads] = await inClub(
      clubId,
      async (tx) => [await getClub(tx), await listSquads(tx)] as const,
      { database },
    )
    clubs.push({ club, squads })
  }
  const of = clubs.reduce((sum, { squads }) => sum + squads.length, 0)
  let done = 0
  for (const { club, squads } of clubs) {
    for (const squad of squads) {
      done += 1
      const told = { clubName: club.name, squadName: squad.name, done, of }
      try {
        yield { ...told, sessions: await rebuildInClub(club, squad, { database, now }) }
      } catch (error) {
        yield { ...told, fault: error instanceof Error ? error : new Error(String(error)) }
      }
    }
  }
}

function rebuildInClub(
  club: Parameters<typeof todayOf>[0] & { readonly id: string },
  { id: squadId }: Squad,
  { database, now }: { readonly database: Database; readonly now: Date },
): Promise<number> {
  return inClub(
    club.id,
    async (tx) => {
      const sessions = await rebuildSquad(tx, { squadId })
      const today = todayOf(club, now)
      for (const { id: seasonId, firstDay } of await listSeasons(tx)) {
        if (firstDay <= today) await refreshFlags(tx, { squadId, seasonId, today, now })
      }
      return sessions
    },
    { database, timeoutMs: squadTimeoutMs },
  )
}
