import 'server-only'
import { demand } from '#access/demand'
import { may, mayEver } from '#access/may'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { earlierDay } from '#common/earlier-day'
import type { Day } from '#common/time'
import type { Club } from '#data/clubs'
import { type CoveredSessions, countCovered } from '#data/covered-sessions'
import { type FlagState, listFlagStates } from '#data/flag-states'
import { type ClubTx, inClub } from '#data/in-club'
import { listPeople } from '#data/people'
import { listPolicies } from '#data/policies'
import { listReviews, type TermReview } from '#data/reviews'
import { listSeasons } from '#data/seasons'
import { listCoachesOn, type SquadCoach } from '#data/squad-coaches'
import { listSquads } from '#data/squads'
import type { LeastTimeKept } from '#fairness/matches/least-time-kept'
import { loadClubDay } from '#server/club-day'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { chooseTerm, type TermOfSeason } from '#server/term-choice'
import { type CoverageOfTerm, loadCoverage } from '#server/term-coverage'
import { loadTermFigures, type TermFigures } from '#server/term-figures'
import { type FlagCounts, flagsOfTerm } from '#server/term-flags'
import { loadTermLeastTime } from '#server/term-least-time'
import { dayIn } from '#server/today'
import type { Squad } from '#squad/squad'
import { finalOn, isFinal } from '#squad/term-review'

/** A squad's term as its review shows it. */
export type SquadReview = {
  readonly squad: Squad
  readonly coaches: readonly Pick<SquadCoach, 'personName' | 'kind'>[]
  readonly covered: readonly Pick<CoveredSessions, 'personName' | 'sessions'>[]
  readonly figures: TermFigures
  /** The term before, for what has changed; null without one. */
  readonly before: TermFigures | null
  /** Least time in the term's matches. */
  readonly leastTime: LeastTimeKept
  readonly flags: FlagCounts
  readonly coverage: CoverageOfTerm
  /** Null: not opened yet. */
  readonly review: {
    readonly openedOn: Day
    readonly openedBy: string
    readonly finalOn: Day
    readonly isFinal: boolean
    readonly answer: string
    readonly answeredBy: string | null
    readonly answeredOn: Day | null
  } | null
  readonly canAnswer: boolean
  /** Luck or habit: open to the viewer; from that day on; or not at all (null). */
  readonly luck: 'open' | { readonly from: Day } | null
}

export type ReviewBook = {
  readonly frame: FrameOfPage
  readonly today: Day
  readonly terms: readonly TermOfSeason[]
  readonly term: TermOfSeason | null
  readonly termBeforeName: string | null
  /** In order of age: a coach's own ones once their review is opened, all of them for who opens reviews. */
  readonly squads: readonly SquadReview[]
  readonly canOpen: boolean
  readonly canHandOver: boolean
  /** Who could take a squad over, by name; empty when the viewer may not hand one over. */
  readonly coaches: readonly { readonly id: string; readonly name: string }[]
}

type Asked = { readonly query: { readonly term?: string | string[] }; readonly now?: Date }

/** @throws AppError `notAllowed`. */
export async function loadReview(viewer: Viewer, { query, now }: Asked): Promise<ReviewBook> {
  if (!mayEver(viewer, 'seeReview')) {
    throw new AppError('notAllowed', `${viewer.role} ${viewer.personId} may not see reviews`)
  }
  return inClub(viewer.clubId, async (tx) => {
    const { club, today } = await loadClubDay(tx, now)
    const choice = chooseTerm(await listSeasons(tx), { asked: query.term, today })
    const canOpen = may(viewer, 'openReview', { kind: 'club' })
    const canHandOver = may(viewer, 'handOverSquad', { kind: 'club' })
    const reviews = choice.term ? await listReviews(tx, choice.term.id) : []
    const squads = (await listSquads(tx)).filter(
      ({ id }) =>
        may(viewer, 'seeReview', { kind: 'squad', squadId: id }) &&
        (canOpen || reviews.some(({ squadId }) => squadId === id)),
    )
    return {
      frame: await loadFrame(tx, viewer, null),
      today,
      terms: choice.begun,
      term: choice.term,
      termBeforeName: choice.before?.name ?? null,
      squads: choice.term
        ? await loadSquads(tx, { viewer, club, today, squads, reviews, ...choice, term: choice.term })
        : [],
      canOpen,
      canHandOver,
      coaches: canHandOver
        ? (await listPeople(tx)).filter(canCoach).map(({ id, name }) => ({ id, name }))
        : [],
    }
  })
}

/** The same, for who opens reviews only: the committee's print is made from it. @throws AppError `notAllowed`. */
export async function loadCommittee(viewer: Viewer, asked: Asked): Promise<ReviewBook> {
  demand(viewer, 'openReview', { kind: 'club' })
  return loadReview(viewer, asked)
}

/** Parents and helpers are handed no squad. */
export function canCoach({ role }: { readonly role: Viewer['role'] }): boolean {
  return role === 'coach' || role === 'headCoach' || role === 'administrator'
}

type OfTerm = {
  readonly viewer: Viewer
  readonly club: Club
  readonly today: Day
  readonly squads: readonly Squad[]
  readonly reviews: readonly TermReview[]
  readonly term: TermOfSeason
  readonly before: TermOfSeason | null
}

async function loadSquads(tx: ClubTx, of: OfTerm): Promise<readonly SquadReview[]> {
  const { squads, term, before, today } = of
  const squadIds = squads.map(({ id }) => id)
  const policies = await listPolicies(tx)
  const flags: readonly FlagState[] = await listFlagStates(tx, { squadIds, seasonId: term.seasonId })
  const shared = { squads, today, policies }
  const figures = await loadTermFigures(tx, { ...shared, term, flags })
  const figuresBefore = before ? await loadTermFigures(tx, { ...shared, term: before, flags: [] }) : null
  const leastTime = await loadTermLeastTime(tx, { ...shared, term })
  const coverage = await loadCoverage(tx, { squads, term, today })
  const coaches = await listCoachesOn(tx, today)
  const covered = await countCovered(tx, {
    squadIds,
    from: term.firstDay,
    to: earlierDay(term.lastDay, today),
  })
  const isOf = (squad: Squad) => (one: { readonly squadId: string }) => one.squadId === squad.id
  return squads.flatMap((squad) => {
    const now = figures.get(squad.id)
    const covers = coverage.get(squad.id)
    const least = leastTime.get(squad.id)
    if (!now || !covers || !least) return []
    const review = of.reviews.find(isOf(squad))
    return [
      {
        squad,
        coaches: coaches.filter(isOf(squad)),
        covered: covered.filter(isOf(squad)),
        figures: now,
        before: figuresBefore?.get(squad.id) ?? null,
        leastTime: least,
        flags: flagsOfTerm(flags.filter(isOf(squad)), { term, timeZone: of.club.timeZone }),
        coverage: covers,
        review: review ? standOf(review, of) : null,
        canAnswer:
          review !== undefined &&
          !isFinal(review, today) &&
          may(of.viewer, 'answerReview', { kind: 'squad', squadId: squad.id }),
        luck: luckOf(squad, { viewer: of.viewer, review, today }),
      },
    ]
  })
}

/** Whoever coaches the squad reads it first; the head coach once the days to answer the review are over. */
function luckOf(
  squad: Squad,
  { viewer, review, today }: Pick<OfTerm, 'viewer' | 'today'> & { readonly review: TermReview | undefined },
): SquadReview['luck'] {
  const object = { kind: 'squad', squadId: squad.id } as const
  if (may(viewer, 'seeLuck', object)) return 'open'
  if (!review || !may(viewer, 'seeReviewedLuck', object)) return null
  return isFinal(review, today) ? 'open' : { from: finalOn(review) }
}

function standOf(review: TermReview, { club, today }: OfTerm): SquadReview['review'] {
  const { openedOn, openedBy, answer, answeredBy, answeredAt } = review
  return {
    openedOn,
    openedBy,
    finalOn: finalOn(review),
    isFinal: isFinal(review, today),
    answer,
    answeredBy,
    answeredOn: answeredAt && dayIn(club.timeZone, answeredAt),
  }
}
