import 'server-only'
import { z } from 'zod'
import { type SumFilter, sessionsOf } from '#data/account-sums'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'
import { noThemeId } from '#data/no-theme'
import { sql } from '#data/sql'
import type { SquadId } from '#squad/squad'
import { waysWritten } from '#squad/written'
import type { ThemedPractice } from '#themes/coverage'

export type SquadThemedPractice = ThemedPractice & { readonly squadId: SquadId }

const row = z.object({
  squadId: z.string(),
  sessionId: z.string(),
  day: z.string(),
  themes: z.array(z.object({ themeId: z.string(), seconds: z.number() })),
})

/** The written practices of squads with the playing time of their themes, in order of time; those without a theme too. */
export async function listThemedPractices(
  tx: ClubTx,
  at: Pick<SumFilter, 'squadIds' | 'from' | 'to'>,
): Promise<readonly SquadThemedPractice[]> {
  return sql(
    tx,
    row,
    Prisma.sql`
      select s."squadId", s.id as "sessionId", s.day::text, coalesce((
        select json_agg(json_build_object('themeId', t."themeId", 'seconds', t.seconds) order by t."themeId")
        from (
          select e."themeId", sum(e.seconds) as seconds from "Exposure" e
          where e."clubId" = s."clubId" and e."sessionId" = s.id and e.role <> 'rest' and e."themeId" <> ${noThemeId}::uuid
          group by e."themeId" having sum(e.seconds) > 0
        ) t
      ), '[]') as themes
      from "Session" s
      where ${sessionsOf(tx, { ...at, kinds: ['practice'], writtens: waysWritten })}
      order by s.day, s."startsAt" nulls first, s.id`,
  )
}
