import 'server-only'
import { atSession, sessionColumns } from '#data/child-copy/at-session'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'
import { matchPlanShape } from '#exchange/match-plan-json'
import type { ChildCopy } from '#rights/child-copy'
import type { PlayerId } from '#squad/player'

/** How matches were planned for a child: out of each plan its own part alone. */
export async function loadMatchPlansPart(
  tx: ClubTx,
  playerId: PlayerId,
): Promise<Pick<ChildCopy, 'matchPlans'>> {
  const named = await tx.db.$queryRaw<{ readonly id: string }[]>(
    Prisma.sql`select "sessionId" as id from "MatchPlan"
      where "clubId" = ${tx.clubId}::uuid and position(${playerId} in plan::text) > 0`,
  )
  const plans = await tx.db.matchPlan.findMany({
    where: { clubId: tx.clubId, sessionId: { in: named.map(({ id }) => id) } },
    select: { plan: true, session: sessionColumns },
    orderBy: { session: { day: 'asc' } },
  })
  return {
    matchPlans: plans.map(({ plan: json, session }) => {
      const plan = matchPlanShape.parse(json)
      return {
        ...atSession(session),
        expected: { ...plan.players.find((one) => one.playerId === playerId) },
        heldInPlace: plan.locks.filter((lock) => lock.playerId === playerId),
        times: plan.spells
          .filter((spell) => spell.playerId === playerId)
          .map(({ line, start, end }) => ({ line, from: start, to: end })),
      }
    }),
  }
}
