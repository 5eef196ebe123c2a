import 'server-only'
import { shareADay } from '#common/dated'
import type { ClubTx } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listMemberships } from '#data/memberships'
import { listSquadPlayers } from '#data/players'
import { listPolicies } from '#data/policies'
import type { SquadDays } from '#data/sessions'
import { getSquad } from '#data/squads'
import { listThemes } from '#data/themes'
import { loadSquadWritten } from '#data/written-sessions'
import { jsonText } from '#exchange/json-text'
import { writeSeasonLog } from '#exchange/write-season-log'
import { lastDayOf } from '#fairness/season-log'
import { asOf } from '#squad/keeps-change'
import { policyInForce } from '#squad/policy'
import { themeAndAbove } from '#themes/theme-tree'

/**
 * The squad's days as a season log. It holds what was written: a session that nobody wrote down says nothing, and an
 * empty one would count as ball not in play. One policy stands for all of it, that of the last day; and who might keep
 * goal is who might in its last session.
 */
export async function exportLog(tx: ClubTx, scope: SquadDays): Promise<string> {
  const written = (await loadSquadWritten(tx, scope)).filter(
    ({ session }) => session.written !== 'notWritten',
  )
  const practices = written.flatMap(({ session, ...one }) =>
    one.kind === 'practice' ? [{ ...one.practice, code: session.code, title: session.title }] : [],
  )
  const matches = written.flatMap(({ session, ...one }) =>
    one.kind === 'match' ? [{ ...one.match, code: session.code }] : [],
  )
  const { ageLimit } = await getSquad(tx, scope.squadId)
  const memberships = await listMemberships(tx, scope.squadId)
  const there = new Set([
    ...memberships
      .filter((membership) => shareADay(membership, { firstDay: scope.from, lastDay: scope.to }))
      .map(({ playerId }) => playerId),
    ...[...practices, ...matches].flatMap(({ register }) => register.map(({ playerId }) => playerId)),
  ])
  const themes = await listThemes(tx)
  const used = new Set(
    practices.flatMap(({ turns }) => turns.flatMap(({ themeId }) => (themeId ? [themeId] : []))),
  )
  const shown = new Set([...used].flatMap((id) => themeAndAbove(themes, id)))
  const players = (await listSquadPlayers(tx, scope.squadId)).filter(({ id }) => there.has(id))
  const changes = await listKeepsChanges(
    tx,
    players.map(({ id }) => id),
  )
  const log = writeSeasonLog({
    policy: policyInForce(await listPolicies(tx), { ageLimit, day: scope.to }),
    players: asOf(players, { changes, day: lastDayOf({ practices, matches }) ?? scope.to }),
    themes: themes.filter(({ id }) => shown.has(id)),
    practices,
    matches,
  })
  return jsonText(log)
}
