import type { KnownCalendarSession } from '#exchange/calendar/calendar-plan'
import { writeCsv } from '#exchange/csv/write-csv'

/** A session as a calendar has it. `session`: its code or id. */
export type CalendarLine = Pick<
  KnownCalendarSession,
  'day' | 'startsAt' | 'kind' | 'title' | 'place' | 'lengthSeconds' | 'goals'
> & { readonly session: string }

/** The calendar as CSV; `readCalendar` understands it without guessing. Goals only where the club counts them. */
export function writeCalendar(
  lines: readonly CalendarLine[],
  { countsGoals }: { readonly countsGoals: boolean },
): string {
  const header = ['Day', 'Time', 'Practice or match', 'Title', 'Place', 'Length in minutes', 'Session']
  const goalsHeader = countsGoals ? ['Our goals', 'Their goals'] : []
  const rows = lines.map(({ day, startsAt, kind, title, place, lengthSeconds, goals, session }) => [
    day,
    startsAt,
    kind,
    title,
    place,
    // A length with seconds would come back as another one.
    lengthSeconds !== null && lengthSeconds % 60 === 0 ? lengthSeconds / 60 : null,
    session,
    ...(countsGoals ? [goals?.ours, goals?.theirs] : []),
  ])
  return writeCsv([[...header, ...goalsHeader], ...rows])
}
