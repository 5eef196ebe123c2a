import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { earlierDay } from '#common/earlier-day'
import type { Day } from '#common/time'
import { type ClubTx, inClub } from '#data/in-club'
import { listSquadPlayers } from '#data/players'
import { listReviewsOfSquad } from '#data/reviews'
import { listSeasons } from '#data/seasons'
import { getSquad } from '#data/squads'
import { namesApart } from '#fairness/book/names-apart'
import { speaksOfPlayers } from '#fairness/luck/as-it-happened'
import { type LuckOrHabit, luckOrHabit } from '#fairness/luck/luck-or-habit'
import { loadClubDay } from '#server/club-day'
import { loadLuckPractices } from '#server/luck-practices'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { chooseTerm, type TermOfSeason } from '#server/term-choice'
import { isMemberBetween } from '#squad/member-between'
import type { Player } from '#squad/player'
import type { Squad, SquadId } from '#squad/squad'
import { isFinal } from '#squad/term-review'

export type LuckBook = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  /** Those that the viewer may look at. */
  readonly terms: readonly TermOfSeason[]
  /** Null: no term has begun. */
  readonly term: TermOfSeason | null
  readonly luck: LuckOrHabit
  /** The part of the turns written in this term that was written as it happened; null: none was written. */
  readonly part: number | null
  /** By name. */
  readonly players: readonly Player[]
}

/** The same draws for every reader, so that a page says the same tomorrow of the same book. */
const seed = 20_261_126

/**
 * Luck or habit in a squad's term: for who coaches it at once, for the head coach when the term's review is final.
 * @throws AppError `notAllowed` or `notFound`.
 */
export async function loadLuck(
  viewer: Viewer,
  {
    squadId,
    query,
    now,
  }: {
    readonly squadId: SquadId
    readonly query: { readonly term?: string | string[] }
    readonly now?: Date
  },
): Promise<LuckBook> {
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    const { begun, term } = chooseTerm(await listSeasons(tx), { asked: query.term, today })
    const terms = await openTerms(tx, viewer, { squadId, begun, today })
    if (term && !terms.includes(term)) demand(viewer, 'seeLuck', { kind: 'squad', squadId })
    const squad = await getSquad(tx, squadId)
    const days = term && { from: term.firstDay, to: earlierDay(term.lastDay, today) }
    const { practices, memberships, part } = days
      ? await loadLuckPractices(tx, { squadId, ...days })
      : { practices: [], memberships: [], part: null }
    const players = namesApart(await listSquadPlayers(tx, squadId)).filter(
      ({ id }) => term && isMemberBetween(memberships, { playerId: id, ...term }),
    )
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      terms,
      term,
      part,
      players,
      luck: luckOrHabit(practices, {
        tested: players.map(({ id }) => id),
        single: speaksOfPlayers(part),
        seed,
      }),
    }
  })
}

type At = { readonly squadId: SquadId; readonly begun: readonly TermOfSeason[]; readonly today: Day }

/** All that have begun for who coaches the squad; for the head coach those whose review is final. */
async function openTerms(
  tx: ClubTx,
  viewer: Viewer,
  { squadId, begun, today }: At,
): Promise<readonly TermOfSeason[]> {
  const object = { kind: 'squad', squadId } as const
  if (may(viewer, 'seeLuck', object)) return begun
  demand(viewer, 'seeReviewedLuck', object)
  const final = (await listReviewsOfSquad(tx, squadId)).filter((review) => isFinal(review, today))
  return begun.filter(({ id }) => final.some(({ termId }) => termId === id))
}
