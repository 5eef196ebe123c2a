import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { earlierDay } from '#common/earlier-day'
import type { Problem } from '#common/problem'
import type { Result } from '#common/result'
import type { Day } from '#common/time'
import { listClosedDays } from '#data/closed-days'
import { listGroundSizes } from '#data/ground-sizes'
import { type ClubTx, inClub } from '#data/in-club'
import { listSessions } from '#data/sessions'
import { parseFields } from '#server/form'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { loadSquadSeason, type SquadSeason } from '#server/squad-season'
import { findWeeklyDays } from '#server/weekly-days'
import { weeklyShape } from '#server/weeks-input'
import type { ClosedDays } from '#squad/closed-days'
import type { Ground } from '#squad/ground'
import type { Squad, SquadId } from '#squad/squad'
import { termNow } from '#squad/term-now'
import type { WeeklyDays } from '#squad/weekly-days'

const fields = ['weekday', 'startsAt', 'place', 'lengthMinutes', 'firstDay', 'lastDay'] as const
/** What is asked for, as it was typed. */
export type AskedWeekly = Readonly<Record<(typeof fields)[number], string>>

export type WeeklyPage = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly today: Day
  /** The last day that can be asked for. */
  readonly lastDay: Day
  readonly asked: AskedWeekly
  /** Null: nothing has been asked for yet. */
  readonly found: Result<WeeklyDays, Problem> | null
  /** Those to come, of the squad and of the whole club. */
  readonly closed: readonly ClosedDays[]
  readonly grounds: readonly Ground[]
  /** Where the squad's sessions of the season are held, without those whose size is known. */
  readonly unknownPlaces: readonly string[]
  readonly mayArrange: boolean
}

/** @throws AppError `notAllowed`, `notFound` or `noSeason`. */
export async function loadWeekly(
  viewer: Viewer,
  at: {
    readonly squadId: SquadId
    readonly query: Readonly<Record<string, string | string[] | undefined>>
    readonly now?: Date
  },
): Promise<WeeklyPage> {
  const { squadId, query } = at
  demand(viewer, 'writeSession', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    const of = await loadSquadSeason(tx, viewer, at)
    const { squad, season, today } = of
    const sessions = await listSessions(tx, { squadId, from: season.firstDay, to: season.lastDay })
    const usual = sessions.findLast(({ kind }) => kind === 'practice')
    const grounds = await listGroundSizes(tx)
    const known = new Set(grounds.map(({ place }) => place))
    const lastDay = termNow(season.terms, today)?.lastDay ?? season.lastDay
    const isAsked = typeof query.weekday === 'string'
    const asked = Object.fromEntries(
      fields.map((name) => [name, typeof query[name] === 'string' ? query[name] : '']),
    ) as AskedWeekly
    const suggested: AskedWeekly = {
      weekday: '2',
      startsAt: usual?.startsAt ?? '',
      place: usual?.place ?? '',
      lengthMinutes: String(usual?.lengthSeconds ? Math.round(usual.lengthSeconds / 60) : 60),
      firstDay: today,
      lastDay: earlierDay(lastDay, season.lastDay),
    }
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      today,
      lastDay: season.lastDay,
      asked: isAsked ? asked : suggested,
      found: isAsked ? await findAsked(tx, of, asked) : null,
      closed: (await listClosedDays(tx, { squadId })).filter((span) => span.lastDay >= today),
      grounds,
      unknownPlaces: [...new Set(sessions.map(({ place }) => place))]
        .filter((place) => place !== '' && !known.has(place))
        .toSorted(),
      mayArrange: may(viewer, 'arrangeClub', { kind: 'club' }),
    }
  })
}

async function findAsked(
  tx: ClubTx,
  { squad, today }: Pick<SquadSeason, 'squad' | 'today'>,
  typed: AskedWeekly,
): Promise<Result<WeeklyDays, Problem>> {
  const asked = parseFields(weeklyShape, typed)
  return asked.ok ? findWeeklyDays(tx, { squadId: squad.id, today, asked: asked.value }) : asked
}
