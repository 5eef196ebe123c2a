import 'server-only'
import { attendanceSoFar } from '#ahead/attendance/attendance-so-far'
import { playedSoFar } from '#ahead/played-so-far'
import type { RequestedPlayer } from '#ahead/request'
import { groupBy } from '#common/group-by'
import { sumAccounts } from '#data/account-sums'
import { listErasedIds } from '#data/erasures'
import type { ClubTx } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listMemberships } from '#data/memberships'
import { listAway } from '#data/player-away'
import { listSquadPlayers } from '#data/players'
import type { StoredTheme } from '#data/themes'
import type { SessionAccount } from '#fairness/account'
import { namesApart } from '#fairness/book/names-apart'
import { seasonDue, seasonOf } from '#planning/season-gaps'
import { noSeconds } from '#rotation/fair-seconds'
import type { SquadSeason } from '#server/squad-season'
import { asOf } from '#squad/keeps-change'
import { isMemberOn, type Term } from '#squad/squad'
import { waysWritten } from '#squad/written'

type OfTerm = {
  readonly of: SquadSeason
  readonly term: Term
  readonly accounts: readonly SessionAccount[]
  readonly themes: readonly StoredTheme[]
}

/** By name: those who belong to the squad today, each with what the book says of it. */
export async function loadAheadPlayers(
  tx: ClubTx,
  { of: { squad, season, today }, term, accounts, themes }: OfTerm,
): Promise<readonly (RequestedPlayer & { readonly name: string })[]> {
  const erased = await listErasedIds(tx)
  const memberships = await listMemberships(tx, squad.id)
  const members = (await listSquadPlayers(tx, squad.id)).filter(
    ({ id }) => !erased.has(id) && isMemberOn(memberships, { playerId: id, day: today }),
  )
  const ids = members.map(({ id }) => id)
  const standing = asOf(members, { changes: await listKeepsChanges(tx, ids), day: today })
  const columns =
    season.firstDay <= today
      ? await sumAccounts(tx, {
          squadIds: [squad.id],
          from: season.firstDay,
          to: today,
          kinds: ['practice'],
          writtens: waysWritten,
          playerIds: ids,
        })
      : []
  const gaps = seasonOf(columns, { withMatches: false })
  const fair = seasonDue(columns)
  const attendance = attendanceSoFar(accounts)
  const played = playedSoFar(accounts, themes)
  const away = groupBy(
    await listAway(tx, { playerIds: ids, from: today, to: term.lastDay }),
    ({ playerId }) => playerId,
  )
  return namesApart(standing).map(({ id, name, keeps }) => ({
    id,
    name,
    keeps,
    ...(attendance.get(id) ?? { came: 0, held: 0 }),
    away: (away.get(id) ?? []).map(({ firstDay, lastDay }) => ({ firstDay, lastDay })),
    gap: gaps.get(id)?.gap ?? noSeconds,
    fair: fair.get(id) ?? noSeconds,
    ...(played.get(id) ?? { playedSeconds: 0, themeSeconds: new Map() }),
  }))
}
