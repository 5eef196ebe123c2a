import 'server-only'
import { allDays } from '#common/time'
import type { ClubTx } from '#data/in-club'
import type { SquadDays } from '#data/sessions'
import { getSquad } from '#data/squads'
import { icalendarType } from '#exchange/icalendar/write-icalendar'
import { exportAhead } from '#server/export-ahead'
import { exportAttendance } from '#server/export-attendance'
import { exportBook } from '#server/export-book'
import { exportCalendar } from '#server/export-calendar'
import { exportIcalendar } from '#server/export-icalendar'
import { exportLog } from '#server/export-log'
import { exportMatches } from '#server/export-matches'
import { exportRoster } from '#server/export-roster'
import { exportTurns } from '#server/export-turns'

export type ExportedFile = { readonly fileName: string; readonly mediaType: string; readonly text: string }

const csv = { ending: 'csv', mediaType: 'text/csv; charset=utf-8; header=present' } as const
const ics = { ending: 'ics', mediaType: icalendarType } as const
const json = { ending: 'json', mediaType: 'application/json' } as const

const exports = {
  log: { ...json, title: 'season log', write: exportLog },
  book: { ...csv, title: 'season book', write: exportBook },
  roster: { ...csv, title: 'roster', write: exportRoster },
  attendance: { ...csv, title: 'attendance', write: exportAttendance },
  matches: { ...csv, title: 'matches', write: exportMatches },
  calendar: { ...csv, title: 'calendar', write: exportCalendar },
  icalendar: { ...ics, title: 'calendar', write: exportIcalendar },
  turns: { ...csv, title: 'turns', write: exportTurns },
  ahead: { ...json, title: 'weeks ahead', write: exportAhead },
} as const

export type ExportKind = keyof typeof exports
export const exportKinds = Object.keys(exports) as readonly ExportKind[]

/** One of the files a squad can be taken away as. Callers have asked whether the viewer may. @throws AppError `notFound`. */
export async function exportFile(
  tx: ClubTx,
  what: ExportKind,
  { now = new Date(), ...scope }: SquadDays & { readonly now?: Date },
): Promise<ExportedFile> {
  const squad = await getSquad(tx, scope.squadId)
  const { ending, mediaType, title, write } = exports[what]
  const text = await write(tx, scope, now)
  const days = scope.from === allDays.from ? '' : ` ${scope.from} to ${scope.to}`
  return { fileName: `${squad.name} ${title}${days}.${ending}`, mediaType, text }
}
