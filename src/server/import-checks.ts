import 'server-only'
import { attendanceLabels } from '#exchange/attendance/attendance-labels'
import { type AttendancePlan, isAttendanceReady } from '#exchange/attendance/attendance-plan'
import { sayAttendanceRow, saySession } from '#exchange/attendance/say-attendance'
import { calendarLabels } from '#exchange/calendar/calendar-labels'
import { type CalendarPlan, isCalendarReady, isChanged } from '#exchange/calendar/calendar-plan'
import { sayCalendarOutcome } from '#exchange/calendar/say-calendar'
import { rosterLabels } from '#exchange/roster/roster-labels'
import { isReady, type RosterPlan } from '#exchange/roster/roster-plan'
import { sayRosterOutcome } from '#exchange/roster/say-roster'
import { type SayingChoice, say } from '#exchange/saying'
import type { DateReading } from '#exchange/table/date-order'
import { columnCount } from '#exchange/table/header'
import type { FileCheck, FileLayout } from '#server/file-check'
import type { ImportBook } from '#server/import-book'
import type { FileInput } from '#server/import-input'
import {
  type AttendanceFile,
  type CalendarFile,
  type FileRows,
  newPlayersOf,
  type RosterFile,
} from '#server/import-plans'

export function checkOfRoster(
  { file, reading, plan }: RosterFile,
  input: FileInput,
  book: ImportBook,
): FileCheck {
  const nameOf = namesIn(book)
  const sayings = new Map(plan.map(({ line, outcome }) => [line, sayRosterOutcome(outcome, nameOf)]))
  const usesDates = reading.columns.includes('firstDay') || reading.columns.includes('lastDay')
  const problems = rosterProblems(reading.columns)
  return {
    layout: layoutOf(file, { ...reading, labels: rosterLabels, usesDates }),
    marks: [],
    problems,
    sessions: [],
    rows: reading.rows.map(({ line, cells }) => ({
      line,
      cells,
      saying: sayings.get(line) ?? say('passed', ''),
    })),
    summary: summaryOfRoster(plan),
    defaults: defaultsOf(input, book),
    isReady: problems.length === 0 && isSettled(reading.dateReading, usesDates) && isReady(plan),
  }
}

function rosterProblems(columns: readonly (string | null)[]): readonly string[] {
  const hasName = ['name', 'firstName', 'lastName'].some((field) => columns.includes(field))
  return hasName ? [] : ['No column holds the names of the players. Say which one does.']
}

export function checkOfAttendance(
  { file, reading, plan }: AttendanceFile,
  input: FileInput,
  book: ImportBook,
): FileCheck {
  const nameOf = namesIn(book)
  const usesDates = reading.columns.includes('date') || reading.columns.includes('marks')
  return {
    layout: layoutOf(file, { ...reading, labels: attendanceLabels, usesDates }),
    marks: reading.marks,
    problems: reading.problems,
    sessions: plan.sessions.map((session) => {
      const { day, kind, title } = session.name
      return {
        key: session.key,
        name: [day, kind, title].filter(Boolean).join(' '),
        saying: saySession(session),
      }
    }),
    rows: sayRows({ reading, plan }, nameOf),
    summary: summaryOfAttendance(plan),
    defaults: defaultsOf(input, book),
    isReady:
      reading.problems.length === 0 && isSettled(reading.dateReading, usesDates) && isAttendanceReady(plan),
  }
}

export function checkOfCalendar(
  { file, reading, plan }: CalendarFile,
  input: FileInput,
  book: ImportBook,
): FileCheck {
  const sayings = new Map(plan.map(({ line, outcome }) => [line, sayCalendarOutcome(outcome)]))
  return {
    layout: layoutOf(file, { ...reading, nameOrder: null, labels: calendarLabels, usesDates: true }),
    marks: [],
    problems: reading.problems,
    sessions: [],
    rows: reading.rows.map(({ line, cells }) => ({
      line,
      cells,
      saying: sayings.get(line) ?? say('passed', ''),
    })),
    summary: summaryOfCalendar(plan),
    defaults: defaultsOf(input, book),
    isReady: reading.problems.length === 0 && isSettled(reading.dateReading, true) && isCalendarReady(plan),
  }
}

function sayRows(
  { reading, plan }: Pick<AttendanceFile, 'reading' | 'plan'>,
  nameOf: (playerId: string) => string,
) {
  return reading.rows.map((row) => ({
    line: row.line,
    cells: row.cells,
    saying: sayAttendanceRow(row, plan, nameOf),
  }))
}

type Reading = Pick<RosterFile['reading'], 'headerLine' | 'dateReading'> & {
  readonly nameOrder: FileLayout['nameOrder']
  readonly columns: readonly (string | null)[]
  readonly labels: Readonly<Record<string, string>>
  readonly usesDates: boolean
}

function layoutOf(file: FileRows, reading: Reading): FileLayout {
  const header = file.rows.find((row) => row.line === reading.headerLine)?.cells ?? []
  const fields: readonly SayingChoice[] = Object.entries(reading.labels).map(([value, label]) => ({
    value,
    label,
  }))
  return {
    encoding: file.encoding,
    separator: file.separator,
    headerLine: reading.headerLine ?? 0,
    lines: file.rows.slice(0, 12).map((row) => row.line),
    headings: Array.from({ length: columnCount(file.rows) }, (_, at) => header[at] || `Column ${at + 1}`),
    columns: reading.columns.map((field) => field ?? ''),
    fields: [{ value: '', label: 'Not used' }, ...fields],
    dates: reading.usesDates ? reading.dateReading : null,
    nameOrder: reading.nameOrder,
  }
}

/** Dates that can be read two ways are asked about before anything is written. */
export function isSettled(dates: DateReading, usesDates: boolean): boolean {
  return !usesDates || dates.kind !== 'open'
}

function namesIn(book: ImportBook): (playerId: string) => string {
  const names = new Map(book.known.map(({ id, name }) => [id, name]))
  return (playerId) => names.get(playerId) ?? 'A player'
}

function defaultsOf(input: FileInput, book: ImportBook): FileCheck['defaults'] {
  return {
    firstDay: input.defaultFirstDay ?? book.season?.firstDay ?? book.today,
    newPlayers: newPlayersOf(input, book),
  }
}

function count(times: number, one: string, many: string): readonly string[] {
  return times === 0 ? [] : [`${times} ${times === 1 ? one : many}.`]
}

function summaryOfRoster(plan: RosterPlan): readonly string[] {
  const of = (...kinds: readonly string[]) =>
    plan.filter(({ outcome }) => kinds.includes(outcome.kind)).length
  const changed = plan.filter(({ outcome }) => outcome.kind === 'known' && outcome.changes.length > 0).length
  return [
    ...count(of('new'), 'new player', 'new players'),
    ...count(changed, 'player changed', 'players changed'),
    ...count(of('known') - changed, 'player as the book has it', 'players as the book has them'),
    ...count(of('doubled'), 'doubled row', 'doubled rows'),
    ...count(of('passedOver', 'leftOut'), 'row passed over', 'rows passed over'),
    ...count(of('question'), 'row to answer', 'rows to answer'),
    ...count(of('problem'), 'row that cannot be read', 'rows that cannot be read'),
  ]
}

function summaryOfCalendar(plan: CalendarPlan): readonly string[] {
  const of = (...kinds: readonly string[]) =>
    plan.filter(({ outcome }) => kinds.includes(outcome.kind)).length
  const changed = plan.filter(({ outcome }) => isChanged(outcome)).length
  return [
    ...count(of('new'), 'new practice or match', 'new practices and matches'),
    ...count(changed, 'practice or match changed', 'practices and matches changed'),
    ...count(of('known') - changed, 'as the book has it', 'as the book has them'),
    ...count(of('doubled'), 'doubled row', 'doubled rows'),
    ...count(of('passedOver', 'leftOut'), 'row passed over', 'rows passed over'),
    ...count(of('question'), 'row to answer', 'rows to answer'),
    ...count(of('problem'), 'row that cannot be taken', 'rows that cannot be taken'),
  ]
}

function summaryOfAttendance({
  players,
  sessions,
  doubledRows,
  openRows,
}: AttendancePlan): readonly string[] {
  const of = (list: typeof players | typeof sessions, ...kinds: readonly string[]) =>
    list.filter(({ outcome }) => kinds.includes(outcome.kind)).length
  return [
    ...count(of(sessions, 'new'), 'new practice or match', 'new practices and matches'),
    ...count(
      of(sessions, 'fill'),
      'register for one that the book has',
      'registers for ones that the book has',
    ),
    ...count(of(sessions, 'same'), 'day that the book has already', 'days that the book has already'),
    ...count(of(players, 'known'), 'player of the book', 'players of the book'),
    ...count(of(players, 'new', 'guest'), 'new player', 'new players'),
    ...count(doubledRows.length, 'doubled row', 'doubled rows'),
    ...count(of(sessions, 'question') + of(players, 'question'), 'question to answer', 'questions to answer'),
    ...count(
      openRows.length + of(sessions, 'problem') + of(players, 'problem'),
      'row or day that cannot be taken',
      'rows and days that cannot be taken',
    ),
  ]
}
