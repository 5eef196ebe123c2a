import 'server-only'
import { earlierDay } from '#common/earlier-day'
import type { Day } from '#common/time'
import { sumAccounts } from '#data/account-sums'
import { listErasedIds } from '#data/erasures'
import type { ClubTx } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listLineWishes } from '#data/line-wishes'
import { sumMatchDays } from '#data/match-day-sums'
import { listMemberships } from '#data/memberships'
import { listPlayers, listSquadPlayers } from '#data/players'
import { findSeasonOn } from '#data/seasons'
import { listSessions, type Session } from '#data/sessions'
import { loadWritten } from '#data/written-sessions'
import { namesApart } from '#fairness/book/names-apart'
import { owedOfMatches } from '#lineup/draft/owed-of-matches'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import { metSecondsOf, nothingMet } from '#lineup/met-seconds'
import { startsDue } from '#lineup/starts-due'
import { noWishes } from '#match/format/line-wish'
import type { Match } from '#match/match'
import { asOf } from '#squad/keeps-change'
import { isMemberOn } from '#squad/squad'
import { waysWritten } from '#squad/written'

/**
 * Everyone a match can be planned for, by name, with what the season's matches leave them due: the squad's, and players of
 * the club who are named already (`alsoIds`).
 */
export async function loadMatchCast(
  tx: ClubTx,
  of: {
    readonly session: Pick<Session, 'id' | 'squadId' | 'day'>
    readonly today: Day
    readonly alsoIds: readonly string[]
  },
): Promise<readonly PickablePlayer[]> {
  const { session, today, alsoIds } = of
  const { squadId, day } = session
  const erased = await listErasedIds(tx)
  const squad = (await listSquadPlayers(tx, squadId)).filter(
    ({ id }) => !erased.has(id) || alsoIds.includes(id),
  )
  const others = alsoIds.filter((id) => !squad.some((player) => player.id === id))
  const players = [...squad, ...(await listPlayers(tx, others))]
  const ids = players.map(({ id }) => id)
  const standing = asOf(players, { changes: await listKeepsChanges(tx, ids), day })
  const memberships = await listMemberships(tx, squadId)
  const wishes = await listLineWishes(tx, ids)
  const season = await loadSeason(tx, { session, today })
  const starts = startsDue(season.matches, (id) => standing.some((own) => own.id === id && own.keeps))
  const met = metSecondsOf(season.ofTerm.flatMap(({ spells }) => spells))
  const ofDay = await sumMatchDays(tx, { playerIds: ids, from: day, to: day, butFor: session.id })
  const played = new Map(ofDay.map(({ playerId, playedSeconds }) => [playerId, playedSeconds]))
  return namesApart(standing).map(({ id, name, keeps }) => {
    const owed = owedOfMatches(season.columns, id)
    return {
      id,
      name,
      keeps,
      isMember: isMemberOn(memberships, { playerId: id, day }),
      owed: { ...owed, starts: starts.get(id) ?? 0 },
      wishes: wishes.get(id) ?? noWishes,
      metSeconds: met.get(id) ?? nothingMet,
      playedToday: played.get(id) ?? 0,
    }
  })
}

/** What the season's book has of matches up to the day; the match itself, should some of it be written, is left out. */
async function loadSeason(
  tx: ClubTx,
  { session, today }: { readonly session: Pick<Session, 'id' | 'squadId' | 'day'>; readonly today: Day },
) {
  const { squadId, day } = session
  const season = await findSeasonOn(tx, day)
  const to = earlierDay(today, day)
  if (!season || to < season.firstDay) return { columns: [], matches: [], ofTerm: [] }
  const asked = { from: season.firstDay, to }
  const columns = await sumAccounts(tx, {
    ...asked,
    squadIds: [squadId],
    kinds: ['match'],
    writtens: waysWritten,
  })
  const sessions = await listSessions(tx, { ...asked, squadId, kind: 'match', withCancelled: false })
  const others = sessions.filter(({ id }) => id !== session.id)
  const matches = (await loadWritten(tx, others)).flatMap((own): readonly Match[] =>
    own.kind === 'match' && own.session.written !== 'notWritten' ? [own.match] : [],
  )
  const term = season.terms.find(({ firstDay, lastDay }) => firstDay <= day && day <= lastDay) ?? season
  return { columns, matches, ofTerm: matches.filter((match) => match.day >= term.firstDay) }
}
