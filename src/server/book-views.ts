import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Day } from '#common/time'
import { type SumFilter, sumAccounts } from '#data/account-sums'
import { type ClubTx, inClub } from '#data/in-club'
import { listSquadPlayers } from '#data/players'
import { countSessions, sumPresences } from '#data/presence-sums'
import { listThemes } from '#data/themes'
import { listPassed } from '#data/turn-sums'
import { type BookRow, bookRows } from '#fairness/book/book-rows'
import { namesApart } from '#fairness/book/names-apart'
import { summedWritten, type WrittenCount } from '#fairness/book/written-count'
import { type BookFilter, type BookQuery, readBookFilter, termOf } from '#server/book-filter'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { daysSoFar, loadSquadSeason } from '#server/squad-season'
import { type Policy, policyInForce } from '#squad/policy'
import type { Season, Squad, SquadId } from '#squad/squad'
import { waysWritten } from '#squad/written'
import type { Theme } from '#themes/theme'
import { type ThemeLine, themeAndBelow, themeLines } from '#themes/theme-lines'

/** The season book of a squad as its page shows it. */
export type SeasonBook = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly season: Season
  readonly themes: readonly ThemeLine[]
  readonly filter: BookFilter
  /** Null: none of the days looked at has come yet. */
  readonly days: { readonly from: Day; readonly to: Day } | null
  readonly policy: Policy
  readonly written: WrittenCount
  readonly members: readonly BookRow[]
  readonly guests: readonly BookRow[]
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadSeasonBook(
  viewer: Viewer,
  { squadId, query, now }: { readonly squadId: SquadId; readonly query: BookQuery; readonly now?: Date },
): Promise<SeasonBook> {
  return inClub(viewer.clubId, async (tx) => {
    const { squad, season, today, policies } = await loadSquadSeason(tx, viewer, { squadId, now })
    const themes = await listThemes(tx)
    const filter = readBookFilter(query, { season, themes })
    const days = daysSoFar({ season, today }, termOf(season, filter.termId))
    // A term that is over stays judged by the rules of its last day.
    const policy = policyInForce(policies, { ageLimit: squad.ageLimit, day: days?.to ?? today })
    const sums = days ? await loadSums(tx, { squadId, days, filter, themes }) : noSums
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      season,
      themes: themeLines(themes),
      filter,
      days,
      policy,
      written: summedWritten(sums.counts, policy),
      ...bookRows({
        ...sums,
        kind: filter.kind,
        isNarrowed: filter.themeId !== null || filter.situation !== null,
        situation: filter.situation,
        players: namesApart(await listSquadPlayers(tx, squadId)),
        policy,
      }),
    }
  })
}

const noSums = { counts: [], columns: [], presences: [], plannedPresences: [], passed: [] }

type SumsAsked = {
  readonly squadId: SquadId
  readonly days: { readonly from: Day; readonly to: Day }
  readonly filter: BookFilter
  readonly themes: readonly Theme[]
}

async function loadSums(tx: ClubTx, { squadId, days, filter, themes }: SumsAsked) {
  const sessions: SumFilter = { squadIds: [squadId], ...days, kinds: [filter.kind] }
  const written: SumFilter = { ...sessions, writtens: waysWritten }
  return {
    counts: await countSessions(tx, sessions),
    columns: await sumAccounts(tx, {
      ...written,
      themeIds: filter.themeId ? [...themeAndBelow(themes, filter.themeId)] : undefined,
      situations: filter.situation ? [filter.situation] : undefined,
    }),
    presences: await sumPresences(tx, written),
    plannedPresences: await sumPresences(tx, { ...written, writtens: ['asPlanned'] }),
    passed: filter.kind === 'practice' ? await listPassed(tx, { squadId, ...days }) : [],
  }
}
