import { type AttendanceSettings, readAttendance } from '#exchange/attendance/read-attendance'
import { readCalendar } from '#exchange/calendar/read-calendar'
import { readRows } from '#exchange/csv/read-rows'
import { readRoster } from '#exchange/roster/read-roster'
import { type FileSettings, noSettings } from '#exchange/table/file-settings'

export const season = { firstDay: '2026-08-01', lastDay: '2027-06-30' }

export function rosterOf(text: string, settings: Partial<FileSettings> = {}) {
  return readRoster(rowsOf(text, settings), { ...noSettings, ...settings }, season)
}

export function attendanceOf(text: string, settings: Partial<AttendanceSettings> = {}) {
  return readAttendance(rowsOf(text, settings), { ...noSettings, marks: {}, ...settings }, season)
}

export function calendarOf(text: string, settings: Partial<FileSettings> = {}) {
  return readCalendar(rowsOf(text, settings), { ...noSettings, ...settings }, season)
}

function rowsOf(text: string, settings: Partial<FileSettings>) {
  const rows = readRows(text, settings.separator ?? null)
  if (!rows.ok) throw new Error(JSON.stringify(rows.reasons))
  return rows.value.rows
}
