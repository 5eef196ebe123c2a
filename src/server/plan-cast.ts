import 'server-only'
import { hasDay } from '#common/dated'
import { daysLater } from '#common/days-later'
import { earlierDay } from '#common/earlier-day'
import { groupBy } from '#common/group-by'
import type { Day } from '#common/time'
import { sumAccounts } from '#data/account-sums'
import { type Adjustment, listAdjustments } from '#data/adjustments'
import { listErasedIds } from '#data/erasures'
import type { ClubTx } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listMemberships } from '#data/memberships'
import { listPlayers, listSquadPlayers } from '#data/players'
import { findSeasonOn } from '#data/seasons'
import type { Session } from '#data/sessions'
import { namesApart } from '#fairness/book/names-apart'
import type { PlayerAgreement } from '#planning/agreed-today'
import type { PlannablePlayer } from '#planning/plannable-player'
import { noSeason, type SeasonColumn, seasonOf, type ThemeShort, themeShort } from '#planning/season-gaps'
import { asOf } from '#squad/keeps-change'
import type { PlayerId } from '#squad/player'
import { isMemberOn } from '#squad/squad'
import { waysWritten } from '#squad/written'

export type PlanCast = {
  /** By name: the squad's, and whoever else is asked for. */
  readonly players: readonly PlannablePlayer[]
  readonly themeShort: ThemeShort
}

/** Everyone a practice can be planned for. `alsoIds`: players of the club who are named in a plan already. */
export async function loadPlanCast(
  tx: ClubTx,
  of: {
    readonly session: Pick<Session, 'squadId' | 'day'>
    readonly today: Day
    readonly alsoIds: readonly string[]
  },
): Promise<PlanCast> {
  const { squadId, day } = of.session
  const erased = await listErasedIds(tx)
  const known = (await listSquadPlayers(tx, squadId)).filter(
    ({ id }) => !erased.has(id) || of.alsoIds.includes(id),
  )
  const others = of.alsoIds.filter((id) => !known.some((player) => player.id === id))
  const players = [...known, ...(await listPlayers(tx, others))]
  const ids = players.map(({ id }) => id)
  const standing = asOf(players, { changes: await listKeepsChanges(tx, ids), day })
  const agreements = await loadAgreements(tx, { playerIds: ids, day })
  const memberships = await listMemberships(tx, squadId)
  const columns = await seasonColumns(tx, of)
  const practice = seasonOf(columns, { withMatches: false })
  const withMatches = seasonOf(columns, { withMatches: true })
  return {
    players: namesApart(standing).map(({ id, name, keeps }) => ({
      id,
      name,
      keeps,
      isMember: isMemberOn(memberships, { playerId: id, day }),
      agreements: agreements.get(id) ?? [],
      season: { practice: practice.get(id) ?? noSeason, withMatches: withMatches.get(id) ?? noSeason },
    })),
    themeShort: themeShort(columns),
  }
}

/** What holds on a day of what was agreed with these players. */
export async function loadAgreements(
  tx: ClubTx,
  { playerIds, day }: { readonly playerIds: readonly PlayerId[]; readonly day: Day },
): Promise<ReadonlyMap<PlayerId, readonly PlayerAgreement[]>> {
  const standing = (await listAdjustments(tx, playerIds)).filter((one) => hasDay(one, day))
  return new Map(
    [...groupBy(standing, ({ playerId }) => playerId)].map(([id, own]) => [id, own.map(agreementOf)]),
  )
}

function agreementOf(adjustment: Adjustment): PlayerAgreement {
  if (adjustment.kind === 'fewerTurns') return { kind: adjustment.kind, dueShare: adjustment.dueShare }
  if (adjustment.kind === 'sameFirstPartner')
    return { kind: adjustment.kind, partnerId: adjustment.partnerId ?? null }
  return { kind: adjustment.kind }
}

/** What the season's book says before the practice: its own turns, if some are written already, are not carried in. */
async function seasonColumns(
  tx: ClubTx,
  { session, today }: { readonly session: Pick<Session, 'squadId' | 'day'>; readonly today: Day },
): Promise<readonly SeasonColumn[]> {
  const season = await findSeasonOn(tx, session.day)
  if (!season) return []
  const to = earlierDay(today, daysLater(session.day, -1))
  if (to < season.firstDay) return []
  return sumAccounts(tx, {
    squadIds: [session.squadId],
    from: season.firstDay,
    to,
    writtens: waysWritten,
  })
}
