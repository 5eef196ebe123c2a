import { kindFrom } from '#exchange/attendance/attendance-words'
import type { CalendarEntry, CalendarField } from '#exchange/calendar/calendar-entry'
import { fitsWord, readResult } from '#exchange/calendar/read-result'
import { timeBehindDate, timeOfDay } from '#exchange/calendar/time-of-day'
import type { CsvRecord } from '#exchange/csv/parse-records'
import type { DaySpan } from '#exchange/table/date-form'
import { type DateReading, dayOfText } from '#exchange/table/date-order'
import { codeProblem, isTitleTooLong, longestTitle } from '#exchange/table/name-cells'
import { nameKey } from '#exchange/table/name-form'
import { cellOf, type RowReading } from '#exchange/table/row-reading'
import { type Goals, mostGoals } from '#match/goals'

export type CalendarRowContext = {
  readonly columns: readonly (CalendarField | null)[]
  readonly dateReading: DateReading
  readonly within: DaySpan | null
  /** The side of ours where the file names both, by its key. */
  readonly ownSide: string | null
}

/** As the book keeps it. */
const longestPlace = 120
const mostMinutes = 600

/** One row of a calendar. */
export function readCalendarRow(row: CsvRecord, context: CalendarRowContext): RowReading<CalendarEntry> {
  const cell = (field: CalendarField) => cellOf(row, context.columns, field)
  const done = (result: RowReading<CalendarEntry>['result']) => ({
    line: row.line,
    cells: row.cells,
    result,
  })
  if (cell('date') === '') return done({ kind: 'passedOver', why: 'no day in it' })
  const problems: string[] = []
  const day = dayOf(cell('date'), context, problems)
  const sides = sidesOf(cell, context, problems)
  if (/^(?:bye|free|spielfrei)$/i.test(sides.opponent))
    return done({ kind: 'passedOver', why: 'nobody to play against' })
  const goals = goalsOf(cell, sides.isHome, problems)
  const kind = kindOf(cell, context, sides.opponent !== '' || goals !== null)
  if (goals && kind === 'practice') problems.push('A practice has no result. Say that it is a match.')
  const title = titleOf({ kind, title: cell('title'), opponent: sides.opponent }, problems)
  const side = sides.isHome === null ? '' : sides.isHome ? 'Home' : 'Away'
  const place = [side, cell('place')].filter(Boolean).join(', ')
  if ([...place].length > longestPlace)
    problems.push(`The place has more than ${longestPlace} characters. Shorten it.`)
  const wrongCode = codeProblem(cell('session'))
  if (wrongCode) problems.push(wrongCode)
  const startsAt = timeOf(cell, context, problems)
  const minutes = minutesOf(cell('lengthMinutes'), problems)
  if (problems.length > 0 || day === null) return done({ kind: 'problem', problems })
  const entry: CalendarEntry = {
    day,
    startsAt,
    kind,
    title,
    place,
    isSideOnly: cell('place') === '',
    lengthSeconds: kind === 'practice' && minutes !== null ? minutes * 60 : null,
    goals,
    code: cell('session') || null,
  }
  return done({ kind: 'understood', entry })
}

type Cell = (field: CalendarField) => string

function dayOf(text: string, { dateReading, within }: CalendarRowContext, problems: string[]): string | null {
  const order = dateReading.kind === 'open' ? (dateReading.orders[0] ?? 'dmy') : dateReading.order
  const day = dayOfText(text, order, within)
  if (day === null)
    problems.push(`“${text}” is no day of the calendar as the dates are read here. Write it like 2026-12-31.`)
  return day
}

function timeOf(cell: Cell, { columns }: CalendarRowContext, problems: string[]): string | null {
  if (!columns.includes('time')) return timeBehindDate(cell('date'))
  const time = timeOfDay(cell('time'))
  if (time === undefined)
    problems.push(`“${cell('time')}” is no time of day. Write it like 17:30, or nothing.`)
  return time ?? null
}

function minutesOf(text: string, problems: string[]): number | null {
  if (text === '') return null
  const minutes = /^\d{1,3}$/.test(text) ? Number(text) : 0
  if (minutes >= 1 && minutes <= mostMinutes) return minutes
  problems.push(`“${text}” is no length. Write whole minutes, 1 to ${mostMinutes}, or nothing.`)
  return null
}

/** Against whom, and whether at home; null: not said. */
function sidesOf(
  cell: Cell,
  { ownSide }: CalendarRowContext,
  problems: string[],
): { readonly opponent: string; readonly isHome: boolean | null } {
  const [home, away] = [cell('homeTeam'), cell('awayTeam')]
  if (ownSide !== null && home !== '' && away !== '') {
    const isHome = nameKey(home) === ownSide
    return { opponent: isHome ? away : home, isHome }
  }
  return { opponent: cell('opponent'), isHome: isHomeFrom(cell('side'), problems) }
}

function isHomeFrom(text: string, problems: string[]): boolean | null {
  const word = text.toLowerCase().replace(/[()]/g, '').trim()
  if (['', '-', '–', 'n', 'neutral'].includes(word)) return null
  if (['h', 'home', 'at home', 'heim', 'zuhause'].includes(word)) return true
  if (['a', 'away', 'gast', 'auswärts', 'auswarts'].includes(word)) return false
  problems.push(`“${text}” is neither home nor away. Write home or away, or nothing.`)
  return null
}

function kindOf(cell: Cell, { columns }: CalendarRowContext, isSurelyMatch: boolean): CalendarEntry['kind'] {
  const said = columns.includes('kind') ? cell('kind') : ''
  if (said !== '') return kindFrom(said)
  return isSurelyMatch ? 'match' : kindFrom(cell('title'))
}

function titleOf(
  { kind, title, opponent }: { readonly kind: string; readonly title: string; readonly opponent: string },
  problems: string[],
): string {
  const whole = kind === 'match' && opponent !== '' ? [opponent, title].filter(Boolean).join(', ') : title
  if (isTitleTooLong(whole)) problems.push(`The title has more than ${longestTitle} characters. Shorten it.`)
  return whole
}

function goalsOf(cell: Cell, isHome: boolean | null, problems: string[]): Goals | null {
  const [ours, theirs] = [cell('ourGoals'), cell('theirGoals')]
  if (ours !== '' || theirs !== '') return goalsOfTwo(ours, theirs, problems)
  const isHomeFirst = cell('resultHomeFirst') !== ''
  const text = isHomeFirst ? cell('resultHomeFirst') : cell('result')
  const read = readResult(text)
  if (read.kind === 'none') return null
  if (read.kind === 'wrong') {
    problems.push(
      `“${text}” is no result. Write it like 3-1. A spreadsheet may have made a date of it: give the column the form Text there.`,
    )
    return null
  }
  if (isHomeFirst && isHome === null) {
    problems.push(`Whose goals come first in ${text} is not clear: the row does not say home or away.`)
    return null
  }
  const isTurned = isHomeFirst && isHome === false
  const goals = isTurned
    ? { ours: read.second, theirs: read.first }
    : { ours: read.first, theirs: read.second }
  if (fitsWord(goals, read.word)) return goals
  problems.push(
    `The result ${text} says ${read.word}, and its goals say otherwise. Write our goals first, or say above that the home side’s come first.`,
  )
  return null
}

function goalsOfTwo(ours: string, theirs: string, problems: string[]): Goals | null {
  const none = ['', '-', '–']
  if (none.includes(ours) && none.includes(theirs)) return null
  const count = (text: string) => (/^\d{1,2}$/.test(text) ? Number(text) : null)
  const goals = { ours: count(ours), theirs: count(theirs) }
  if (goals.ours !== null && goals.theirs !== null) return { ours: goals.ours, theirs: goals.theirs }
  problems.push(
    `“${ours}” and “${theirs}” are no goals of two sides. Write whole numbers, 0 to ${mostGoals}, for both or for neither.`,
  )
  return null
}
