import 'server-only'
import { earlierDay } from '#common/earlier-day'
import type { Day } from '#common/time'
import type { ClubTx } from '#data/in-club'
import { listSquadPlayers } from '#data/players'
import { type LeastTimeKept, leastTimeKept } from '#fairness/matches/least-time-kept'
import { loadMatchPromise } from '#server/match-promise'
import { loadMatchSeason } from '#server/match-season'
import { type PolicyVersion, policyInForce } from '#squad/policy'
import type { Squad, SquadId, Term } from '#squad/squad'

/** Whether everyone had the least time in a term's matches up to today, squad by squad. */
export async function loadTermLeastTime(
  tx: ClubTx,
  of: {
    readonly squads: readonly Squad[]
    readonly term: Pick<Term, 'firstDay' | 'lastDay'>
    readonly today: Day
    readonly policies: readonly PolicyVersion[]
  },
): Promise<ReadonlyMap<SquadId, LeastTimeKept>> {
  const to = earlierDay(of.term.lastDay, of.today)
  const kept = new Map<SquadId, LeastTimeKept>()
  for (const { id: squadId, ageLimit } of of.squads) {
    const policy = policyInForce(of.policies, { ageLimit, day: to })
    const { promise } = await loadMatchPromise(tx, { squadId, policy })
    const playerIds = (await listSquadPlayers(tx, squadId)).map(({ id }) => id)
    const days = { squadId, from: of.term.firstDay, to }
    const { matches } = await loadMatchSeason(tx, { days, playerIds, promise })
    kept.set(squadId, leastTimeKept(matches))
  }
  return kept
}
