import 'server-only'
import type { ComingPractice } from '#ahead/missing/coming-practice'
import { type ComingWeek, comingWeeks } from '#ahead/missing/coming-weeks'
import { forecastThemes, type ProgrammeForecast } from '#ahead/missing/forecast-themes'
import { type MissingOfPlayers, missingOfPlayers } from '#ahead/missing/missing-of-players'
import { hasDay } from '#common/dated'
import { laterDay } from '#common/later-day'
import { listClosedDays } from '#data/closed-days'
import type { ClubTx } from '#data/in-club'
import { listSessions } from '#data/sessions'
import { findTermPlan } from '#data/term-plans'
import type { StoredTheme } from '#data/themes'
import type { SessionAccount } from '#fairness/account'
import { loadAheadPlayers } from '#server/ahead-players'
import type { SquadSeason } from '#server/squad-season'
import type { Term } from '#squad/squad'
import type { ProgrammeCoverage } from '#themes/coverage'
import type { ProgrammeEntry } from '#themes/theme'

/** What is missing of a term's programme, and how the term is likely to end. */
export type ThemesMissing = {
  readonly forecast: ProgrammeForecast
  readonly players: MissingOfPlayers & {
    readonly names: readonly { readonly id: string; readonly name: string }[]
  }
  readonly weeks: readonly ComingWeek[]
}

type OfTerm = {
  readonly of: SquadSeason
  readonly term: Term
  /** Of the term's practices. */
  readonly accounts: readonly SessionAccount[]
  readonly themes: readonly StoredTheme[]
  readonly programme: readonly ProgrammeEntry[]
  readonly cover: ProgrammeCoverage
}

export async function loadMissing(tx: ClubTx, at: OfTerm): Promise<ThemesMissing> {
  const { of, term, accounts, themes, programme, cover } = at
  const coming = await loadComing(tx, { of, term, themes })
  const players = await loadAheadPlayers(tx, { of, term, accounts, themes })
  const forecast = forecastThemes({ themes, programme, cover, coming })
  return {
    forecast,
    players: {
      ...missingOfPlayers({ themes, programme, players, accounts, coming }),
      names: players.map(({ id, name }) => ({ id, name })),
    },
    weeks: comingWeeks({ themes, themeIds: forecast.themes.map(({ themeId }) => themeId), coming }),
  }
}

/** Practices of the term that are still to come, days without practice left out, with what is planned for them. */
async function loadComing(
  tx: ClubTx,
  { of: { squad, today }, term, themes }: Pick<OfTerm, 'of' | 'term' | 'themes'>,
): Promise<readonly ComingPractice[]> {
  if (term.lastDay < today) return []
  const from = laterDay(term.firstDay, today)
  const at = { squadId: squad.id, from, to: term.lastDay, kind: 'practice', withCancelled: false } as const
  const sessions = (await listSessions(tx, at)).filter(({ written }) => written === 'notWritten')
  const closed = await listClosedDays(tx, { squadId: squad.id })
  const stored = await findTermPlan(tx, { squadId: squad.id, termId: term.id })
  const planned = new Map(stored?.plan.practices.map(({ sessionId, themeId }) => [sessionId, themeId]))
  const known = new Set(themes.map(({ id }) => id))
  return sessions
    .filter(({ day }) => !closed.some((days) => hasDay(days, day)))
    .map(({ id, day, themeId }) => {
      const theme = themeId ?? planned.get(id) ?? null
      return { id, day, themeId: theme !== null && known.has(theme) ? theme : null }
    })
}
