import 'server-only'
import type { ClubTx } from '#data/in-club'
import { findFormatOfSquad } from '#data/match-formats'
import type { MatchPromise } from '#fairness/matches/promised-seconds'
import type { MatchFormat } from '#match/format/match-format'
import type { Policy } from '#squad/policy'
import type { SquadId } from '#squad/squad'

/** How a squad's matches are played, and what everyone is promised of each. */
export async function loadMatchPromise(
  tx: ClubTx,
  { squadId, policy }: { readonly squadId: SquadId; readonly policy: Policy },
): Promise<{ readonly format: MatchFormat | null; readonly promise: MatchPromise }> {
  const format = (await findFormatOfSquad(tx, squadId))?.format ?? null
  return {
    format,
    promise: { leastTime: format?.leastTime ?? null, policyShare: policy.leastMatchShare },
  }
}
