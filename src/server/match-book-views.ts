import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Day } from '#common/time'
import { type ClubTx, inClub } from '#data/in-club'
import { sumMatchDays } from '#data/match-day-sums'
import { listSquadPlayers } from '#data/players'
import { namesApart } from '#fairness/book/names-apart'
import { countWritten, type WrittenCount } from '#fairness/book/written-count'
import { type BelowPromise, belowPromise } from '#fairness/matches/below-promise'
import { longDays, type PlayedDay } from '#fairness/matches/long-days'
import { type MatchRow, matchRows } from '#fairness/matches/match-rows'
import type { MatchPromise } from '#fairness/matches/promised-seconds'
import { type ShareRange, shareRange } from '#fairness/matches/share-range'
import type { MatchFormat } from '#match/format/match-format'
import { loadMatchPromise } from '#server/match-promise'
import { loadMatchSeason, type MatchOfSeason } from '#server/match-season'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { daysSoFar, loadSquadSeason } from '#server/squad-season'
import type { Player } from '#squad/player'
import { type Policy, policyInForce } from '#squad/policy'
import type { Season, Squad, SquadId } from '#squad/squad'

/** The season's matches of a squad as their page shows them. */
export type MatchBook = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly season: Season
  readonly termId: string | null
  /** Null: none of the days looked at has come yet. */
  readonly days: { readonly from: Day; readonly to: Day } | null
  readonly policy: Policy
  readonly format: MatchFormat | null
  readonly written: WrittenCount
  readonly players: readonly Player[]
  readonly members: readonly MatchRow[]
  readonly guests: readonly MatchRow[]
  /** In order of time. */
  readonly matches: readonly MatchOfSeason[]
  /** Over all of the matches, of members; null: nobody was there. */
  readonly range: ShareRange | null
  readonly below: readonly BelowPromise[]
  readonly longDays: readonly PlayedDay[]
}

type MatchQuery = { readonly term?: string | string[] }

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadMatchBook(
  viewer: Viewer,
  { squadId, query, now }: { readonly squadId: SquadId; readonly query: MatchQuery; readonly now?: Date },
): Promise<MatchBook> {
  return inClub(viewer.clubId, async (tx) => {
    const { squad, season, today, policies } = await loadSquadSeason(tx, viewer, { squadId, now })
    const term = season.terms.find(({ id }) => id === query.term) ?? null
    const days = daysSoFar({ season, today }, term)
    // A term that is over stays judged by the rules of its last day.
    const policy = policyInForce(policies, { ageLimit: squad.ageLimit, day: days?.to ?? today })
    const { format, promise } = await loadMatchPromise(tx, { squadId, policy })
    const players = namesApart(await listSquadPlayers(tx, squadId))
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      season,
      termId: term?.id ?? null,
      days,
      policy,
      format,
      players,
      ...(await loadMatches(tx, { squadId, days, policy, format, promise, players })),
    }
  })
}

type Asked = Pick<MatchBook, 'days' | 'policy' | 'format' | 'players'> & {
  readonly squadId: SquadId
  readonly promise: MatchPromise
}

async function loadMatches(tx: ClubTx, { squadId, days, policy, format, promise, players }: Asked) {
  const playerIds = players.map(({ id }) => id)
  const { sessions, accounts, agreements, matches } = await loadMatchSeason(tx, {
    days: days && { squadId, ...days },
    playerIds,
    promise,
  })
  const { members, guests } = matchRows({ matches, standing: { accounts, agreements }, players, policy })
  const played = days ? await sumMatchDays(tx, { playerIds, ...days }) : []
  return {
    written: countWritten(sessions, policy),
    members,
    guests,
    matches,
    range: shareRange(
      members.map((row) => ({ ...row, playerId: row.player.id, playedSeconds: row.played.seconds })),
    ),
    below: belowPromise(matches),
    longDays: longDays(played, format?.mostSecondsADay ?? null),
  }
}
