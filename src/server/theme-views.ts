import 'server-only'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { type Day, isoWeekOf } from '#common/time'
import { mondayOf } from '#common/weeks'
import { listAccounts } from '#data/accounts'
import { type ClubTx, inClub } from '#data/in-club'
import { listMemberships } from '#data/memberships'
import { listSquadPlayers } from '#data/players'
import { listProgramme, listThemes, type StoredTheme } from '#data/themes'
import type { SessionAccount } from '#fairness/account'
import { namesApart } from '#fairness/book/names-apart'
import { countWritten, type WrittenCount } from '#fairness/book/written-count'
import { themedPractices, themeParts } from '#fairness/theme-parts'
import { termOf } from '#server/book-filter'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { loadProgrammeSettings, type ProgrammeSettings } from '#server/programme-settings'
import { daysSoFar, loadSquadSeason, type SquadSeason } from '#server/squad-season'
import { loadMissing, type ThemesMissing } from '#server/theme-missing'
import { isMemberBetween } from '#squad/member-between'
import type { Squad, SquadId, Term } from '#squad/squad'
import { termNow } from '#squad/term-now'
import { coverProgramme, type ProgrammeCoverage, type ThemeCoverage } from '#themes/coverage'
import type { ProgrammeEntry } from '#themes/theme'
import { themeAndBelow, themeLines } from '#themes/theme-lines'
import { type ThemeMeeting, themeMeetings } from '#themes/theme-meetings'

export type ThemeRow = {
  readonly theme: StoredTheme
  /** Steps it stands under other themes. */
  readonly depth: number
  /** Null: neither planned nor met in this term. */
  readonly coverage: ThemeCoverage | null
  /** Not planned itself, but themes under it are. */
  readonly isHeading: boolean
}

export type ThemesBook = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly terms: readonly Term[]
  /** Null: the season has no term. */
  readonly term: Term | null
  readonly written: WrittenCount
  /** Weeks of the term up to today: practices written and held of each. */
  readonly weeks: readonly {
    readonly week: string
    readonly firstDay: Day
    readonly written: number
    readonly held: number
  }[]
  readonly rows: readonly ThemeRow[]
  readonly onCourse: ProgrammeCoverage['onCourse']
  /** What the squad wishes for in the term. */
  readonly programme: readonly ProgrammeEntry[]
  /** What is missing of the programme, with the weeks to come; null without a term. */
  readonly missing: ThemesMissing | null
  /** Then its programme stays as it was. */
  readonly isTermOver: boolean
  readonly mayChange: boolean
  /** When themes may come, and what else is set; null without a term, or where it is not the viewer's to change. */
  readonly settings: ProgrammeSettings | null
  /** By name. A theme that no practice had while the player belonged to the squad is not among its meetings. */
  readonly players: readonly {
    readonly id: string
    readonly name: string
    readonly meetings: ReadonlyMap<string, ThemeMeeting>
  }[]
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadThemes(
  viewer: Viewer,
  at: {
    readonly squadId: SquadId
    readonly query: { readonly term?: string | string[] }
    readonly now?: Date
  },
): Promise<ThemesBook> {
  return inClub(viewer.clubId, async (tx) => {
    const of = await loadSquadSeason(tx, viewer, at)
    const { squad, season, today, policy } = of
    const asked = typeof at.query.term === 'string' ? termOf(season, at.query.term) : null
    const term = asked ?? termNow(season.terms, today)
    const days = term && daysSoFar(of, term)
    const accounts = days ? await listAccounts(tx, { squadId: squad.id, ...days, kinds: ['practice'] }) : []
    const themes = await listThemes(tx)
    const programme = term ? await listProgramme(tx, { squadId: squad.id, termId: term.id }) : []
    const cover = coverProgramme({
      themes,
      programme,
      term: days ? { firstDay: days.from, lastDay: days.to } : nothingYet,
      practices: themedPractices(accounts),
    })
    const mayChange = may(viewer, 'changeProgramme', { kind: 'squad', squadId: squad.id })
    const coverages = new Map(cover.themes.map((coverage) => [coverage.themeId, coverage]))
    return {
      frame: await loadFrame(tx, viewer, squad.id),
      squad,
      terms: season.terms,
      term,
      written: countWritten(accounts, policy),
      weeks: cover.weeks.map((week, index) => ({
        week,
        firstDay: mondayOf(week),
        written: cover.practicesByWeek[index] ?? 0,
        held: accounts.filter(({ day }) => isoWeekOf(day) === week).length,
      })),
      rows: themeLines(themes).map(({ theme, depth }) => ({
        theme,
        depth,
        coverage: coverages.get(theme.id) ?? null,
        isHeading: isHeading(theme.id, { themes, programme }),
      })),
      onCourse: cover.onCourse,
      programme,
      missing: term && (await loadMissing(tx, { of, term, accounts, themes, programme, cover })),
      isTermOver: term !== null && term.lastDay < today,
      mayChange,
      settings: mayChange && term ? await loadProgrammeSettings(tx, viewer, { squad, term }) : null,
      players: await loadPlayers(tx, { of, term, accounts, themes }),
    }
  })
}

function isHeading(
  themeId: string,
  {
    themes,
    programme,
  }: { readonly themes: readonly StoredTheme[]; readonly programme: readonly ProgrammeEntry[] },
): boolean {
  const planned = programme.filter(({ wishedShare }) => wishedShare > 0).map((entry) => entry.themeId)
  const below = themeAndBelow(themes, themeId)
  return !planned.includes(themeId) && planned.some((id) => below.has(id))
}

const nothingYet = { firstDay: '9999-12-31', lastDay: '9999-12-30' }

type OfTerm = {
  readonly of: SquadSeason
  readonly term: Term | null
  readonly accounts: readonly SessionAccount[]
  readonly themes: readonly StoredTheme[]
}

async function loadPlayers(
  tx: ClubTx,
  { of, term, accounts, themes }: OfTerm,
): Promise<ThemesBook['players']> {
  const memberships = await listMemberships(tx, of.squad.id)
  const meetings = themeMeetings(themeParts(accounts), themes)
  return namesApart(await listSquadPlayers(tx, of.squad.id))
    .filter((player) => term && isMemberBetween(memberships, { playerId: player.id, ...term }))
    .map(({ id, name }) => ({
      id,
      name,
      meetings: new Map(
        meetings.filter(({ playerId }) => playerId === id).map((meeting) => [meeting.themeId, meeting]),
      ),
    }))
}
