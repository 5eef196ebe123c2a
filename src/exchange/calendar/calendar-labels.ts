import type { CalendarField } from '#exchange/calendar/calendar-entry'

/** What the columns are called where a person maps them. */
export const calendarLabels: Readonly<Record<CalendarField, string>> = {
  date: 'Day',
  time: 'Time of day',
  kind: 'Practice or match',
  title: 'Title',
  opponent: 'Opponent',
  homeTeam: 'Home side',
  awayTeam: 'Away side',
  side: 'Home or away',
  place: 'Place',
  lengthMinutes: 'Length in minutes',
  result: 'Result, our goals first',
  resultHomeFirst: 'Result, the home side’s goals first',
  ourGoals: 'Our goals',
  theirGoals: 'Their goals',
  session: 'Code of the session',
}
