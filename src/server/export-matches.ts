import 'server-only'
import type { ClubTx } from '#data/in-club'
import { listSquadPlayers } from '#data/players'
import { listPolicies } from '#data/policies'
import type { SquadDays } from '#data/sessions'
import { getSquad } from '#data/squads'
import { exportKeys } from '#exchange/export-keys'
import { writeMatches } from '#exchange/write-matches'
import { loadMatchPromise } from '#server/match-promise'
import { loadMatchSeason } from '#server/match-season'
import { policyInForce } from '#squad/policy'

/** What every written match was for everyone who was there, in order of time, players by name. */
export async function exportMatches(tx: ClubTx, scope: SquadDays): Promise<string> {
  const { ageLimit } = await getSquad(tx, scope.squadId)
  const players = await listSquadPlayers(tx, scope.squadId)
  const policy = policyInForce(await listPolicies(tx), { ageLimit, day: scope.to })
  const { promise } = await loadMatchPromise(tx, { squadId: scope.squadId, policy })
  const playerIds = players.map(({ id }) => id)
  const { sessions, matches } = await loadMatchSeason(tx, { days: scope, playerIds, promise })
  const keys = exportKeys(players)
  const sessionKeys = exportKeys(sessions)
  return writeMatches(
    matches.flatMap(({ sessionId, day, title, figures }) =>
      players.flatMap(({ id, name }) =>
        figures
          .filter(({ playerId }) => playerId === id)
          .map((figure) => ({
            ...figure,
            name,
            player: keys.get(id) ?? id,
            day,
            match: sessionKeys.get(sessionId) ?? sessionId,
            title,
          })),
      ),
    ),
  )
}
