import type { AttendanceField } from '#exchange/attendance/attendance-entry'

/** What the columns are called where a person maps them. */
export const attendanceLabels: Readonly<Record<AttendanceField, string>> = {
  name: 'Name',
  firstName: 'First name',
  lastName: 'Last name',
  shirt: 'Shirt number (only tells players apart)',
  code: 'Code of the player',
  marks: 'Marks of the day above',
  date: 'Date',
  mark: 'Mark',
  kind: 'Practice or match',
  title: 'Title',
  session: 'Code of the session',
  lengthSeconds: 'Length in seconds',
  fromSecond: 'From second',
  toSecond: 'To second',
  lateMinutes: 'Minutes late',
}
