import 'server-only'
import { z } from 'zod'
import { Prisma } from '#data/generated/client'
import { isId, newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'
import { familyPageShape } from '#exchange/family-page-json'
import type { FamilyPage } from '#family/family-page'
import type { PlayerId } from '#squad/player'
import type { SeasonId, SquadId } from '#squad/squad'

/** A page as a coach confirmed it. It is never changed; a later one takes its place. */
export type ConfirmedPage = {
  readonly playerId: PlayerId
  readonly squadId: SquadId
  readonly seasonId: SeasonId
  readonly page: FamilyPage
  readonly confirmedById: string | null
  /** Kept with the page: families see no list of people. */
  readonly confirmedBy: string
  readonly confirmedAt: Date
  readonly showsFrom: Date
}

export async function recordFamilyPages(tx: ClubTx, pages: readonly ConfirmedPage[]): Promise<void> {
  await tx.db.familyPage.createMany({
    data: pages.map(({ page, confirmedBy, ...row }) => ({
      clubId: tx.clubId,
      id: newId(),
      ...row,
      page: { ...JSON.parse(JSON.stringify(page)), confirmedBy },
    })),
  })
}

type Asked = {
  readonly seasonId: SeasonId
  readonly playerIds: readonly PlayerId[]
  readonly squadIds: readonly SquadId[]
  /** Only those that families could see at this instant; left out, those still to come count too. */
  readonly shownAt?: Date
}

const row = z.object({
  playerId: z.string(),
  squadId: z.string(),
  seasonId: z.string(),
  page: z.looseObject({ confirmedBy: z.string() }),
  confirmedById: z.string().nullable(),
  confirmedAt: z.date(),
  showsFrom: z.date(),
})

/** The newest page of each player in each squad. */
export async function listNewestPages(tx: ClubTx, asked: Asked): Promise<readonly ConfirmedPage[]> {
  if (!isId(asked.seasonId)) return []
  const shown = asked.shownAt ? Prisma.sql`and "showsFrom" <= ${asked.shownAt}` : Prisma.empty
  const rows = await sql(
    tx,
    row,
    Prisma.sql`
      select distinct on ("playerId", "squadId")
        "playerId", "squadId", "seasonId", page, "confirmedById", "confirmedAt", "showsFrom"
      from "FamilyPage"
      where "clubId" = ${tx.clubId}::uuid and "seasonId" = ${asked.seasonId}::uuid
        and "playerId" = any(${asked.playerIds.filter(isId)}::uuid[])
        and "squadId" = any(${asked.squadIds.filter(isId)}::uuid[]) ${shown}
      order by "playerId", "squadId", "confirmedAt" desc, id desc`,
  )
  return rows.map(({ page: { confirmedBy, ...page }, ...rest }) => ({
    ...rest,
    page: familyPageShape.parse(page),
    confirmedBy,
  }))
}
