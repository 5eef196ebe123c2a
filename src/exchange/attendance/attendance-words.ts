import type { AttendanceField } from '#exchange/attendance/attendance-entry'
import { rosterWords } from '#exchange/roster/roster-words'
import type { ColumnWords } from '#exchange/table/header'

const { name, firstName, lastName, shirt, code } = rosterWords

/** Words above the columns of an attendance list. Common practice, no source. */
export const attendanceWords: ColumnWords<AttendanceField> = {
  name,
  firstName,
  lastName,
  shirt,
  code,
  date: ['date', 'day', 'session date', 'practice date', 'on', 'datum', 'tag', 'fecha', 'data', 'dato'],
  mark: [
    'attendance',
    'attended',
    'state',
    'status',
    'present',
    'presence',
    'here',
    'anwesenheit',
    'anwesend',
    'présence',
    'asistencia',
    'aanwezigheid',
    'obecność',
  ],
  kind: ['kind', 'type', 'session type', 'practice or match', 'art'],
  title: ['title', 'session name', 'event', 'titel', 'opponent', 'against'],
  session: ['session', 'session id', 'session code'],
  lengthSeconds: ['length seconds'],
  fromSecond: ['from second'],
  toSecond: ['to second'],
  lateMinutes: ['minutes late', 'late minutes', 'late by', 'late min'],
  marks: [],
}

const matchWords =
  /\b(?:match|game|fixture|league|cup|friendly|tournament|vs?\.?|spiel|wedstrijd|partido|mecz)\b/i

/** Whether a text beside a date speaks of a match; a practice otherwise. */
export function kindFrom(text: string): 'practice' | 'match' {
  return matchWords.test(text) ? 'match' : 'practice'
}
