import 'server-only'
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
import { type SeasonColumn, seasonOf } from '#planning/season-gaps'
import { noSeconds } from '#rotation/fair-seconds'
import type { ColumnSeconds, RotationColumn } from '#rotation/problem'
import type { SquadSeason } from '#server/squad-season'
import { asOf } from '#squad/keeps-change'
import { isMemberOn, type Term } from '#squad/squad'
import { waysWritten } from '#squad/written'
import { themeAndAbove } from '#themes/theme-tree'

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
  const fair = fairByColumn(columns)
  const away = groupBy(
    await listAway(tx, { playerIds: ids, from: today, to: term.lastDay }),
    ({ playerId }) => playerId,
  )
  return namesApart(standing).map(({ id, name, keeps }) => ({
    id,
    name,
    keeps,
    ...attendanceOf(id, accounts),
    away: (away.get(id) ?? []).map(({ firstDay, lastDay }) => ({ firstDay, lastDay })),
    gap: gaps.get(id)?.gap ?? noSeconds,
    fair: fair.get(id) ?? noSeconds,
    ...playedOf(id, { accounts, themes }),
  }))
}

/** What everyone was due in each column, members' practices only. */
function fairByColumn(columns: readonly SeasonColumn[]): ReadonlyMap<string, ColumnSeconds> {
  const fair = new Map<string, Record<RotationColumn, number>>()
  for (const { playerId, isMember, role, situation, dueSeconds } of columns) {
    if (!isMember) continue
    const own = fair.get(playerId) ?? { ...noSeconds }
    own[role] += dueSeconds
    if (situation) own[situation] += dueSeconds
    fair.set(playerId, own)
  }
  return fair
}

function attendanceOf(
  id: string,
  accounts: readonly SessionAccount[],
): Pick<RequestedPlayer, 'came' | 'held'> {
  const own = accounts.flatMap(({ presences }) =>
    presences.filter(({ playerId, isMember }) => playerId === id && isMember),
  )
  return { came: own.filter(({ attendance }) => attendance !== 'away').length, held: own.length }
}

function playedOf(
  id: string,
  { accounts, themes }: Pick<OfTerm, 'accounts' | 'themes'>,
): Pick<RequestedPlayer, 'playedSeconds' | 'themeSeconds'> {
  const lines = accounts.flatMap((account) =>
    account.lines.filter(({ playerId, role }) => playerId === id && role !== 'rest'),
  )
  const themeSeconds = new Map<string, number>()
  for (const { themeId, seconds } of lines) {
    if (themeId === null) continue
    for (const above of themeAndAbove(themes, themeId))
      themeSeconds.set(above, (themeSeconds.get(above) ?? 0) + seconds)
  }
  return { playedSeconds: lines.reduce((all, { seconds }) => all + seconds, 0), themeSeconds }
}
