import 'server-only'
import { earlierDay } from '#common/earlier-day'
import { groupBy } from '#common/group-by'
import type { Day } from '#common/time'
import { listBelowLeastShare } from '#data/below-least-share'
import type { ClubTx } from '#data/in-club'
import { listMatchFormats, listSquadFormats } from '#data/match-formats'
import { countSessions } from '#data/presence-sums'
import { belowReason } from '#fairness/matches/below-promise'
import type { LeastTimeKept } from '#fairness/matches/least-time-kept'
import { type PolicyVersion, policyInForce } from '#squad/policy'
import type { Squad, SquadId, Term } from '#squad/squad'
import { waysWritten } from '#squad/written'

/**
 * Whether everyone had the least part of a term's matches up to today, squad by squad: of the squad's format, else of the
 * policy. What a format promises in whole periods stands on the squad's own page. Four questions to the database, whatever
 * the number of squads.
 */
export async function loadTermLeastTime(
  tx: ClubTx,
  of: {
    readonly squads: readonly Squad[]
    readonly term: Pick<Term, 'firstDay' | 'lastDay'>
    readonly today: Day
    readonly policies: readonly PolicyVersion[]
  },
): Promise<ReadonlyMap<SquadId, LeastTimeKept>> {
  const days = { from: of.term.firstDay, to: earlierDay(of.term.lastDay, of.today) }
  const formats = new Map((await listMatchFormats(tx)).map(({ id, format }) => [id, format]))
  const played = await listSquadFormats(tx)
  const leastShares = new Map(
    of.squads.map(({ id, ageLimit }) => {
      const policy = policyInForce(of.policies, { ageLimit, day: days.to })
      const share = formats.get(played.get(id) ?? '')?.leastTime.share ?? policy.leastMatchShare
      return [id, share] as const
    }),
  )
  const squadIds = [...leastShares.keys()]
  const written = { squadIds, ...days, kinds: ['match'], writtens: waysWritten } as const
  const counts = await countSessions(tx, written)
  const below = groupBy(await listBelowLeastShare(tx, { leastShares, ...days }), ({ squadId }) => squadId)
  return new Map(
    [...leastShares].map(([squadId, share]) => {
      const own = below.get(squadId) ?? []
      return [
        squadId,
        {
          share,
          matches: counts.reduce((sum, one) => sum + (one.squadId === squadId ? one.sessions : 0), 0),
          matchesBelow: new Set(own.map(({ sessionId }) => sessionId)).size,
          timesBelow: own.length,
          timesThroughout: own.filter((one) => belowReason(one) === null).length,
        },
      ]
    }),
  )
}
