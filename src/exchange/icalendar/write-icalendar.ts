import type { CalendarEvent, EventTime } from '#exchange/icalendar/calendar-event'
import { foldLine } from '#exchange/icalendar/fold-line'
import { lineValue, textValue } from '#exchange/icalendar/text-value'

export const icalendarType = 'text/calendar; charset=utf-8'

type Calendar = {
  readonly name: string
  /** How often whoever follows it should ask again; null: it is not followed. */
  readonly refreshHours: number | null
  readonly events: readonly CalendarEvent[]
}

/**
 * A calendar as iCalendar (RFC 5545), its name and how often to ask as RFC 7986 has them. Times are in UTC, so that it
 * needs no description of any zone's clocks. The same calendar gives the same bytes.
 */
export function writeIcalendar({ name, refreshHours, events }: Calendar): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Turnbook//Turnbook//EN',
    'CALSCALE:GREGORIAN',
    `NAME:${lineValue(name)}`,
    // Older than RFC 7986, and what most programs read.
    `X-WR-CALNAME:${lineValue(name)}`,
    ...(refreshHours === null ? [] : [`REFRESH-INTERVAL;VALUE=DURATION:PT${refreshHours}H`]),
    ...events.flatMap(linesOfEvent),
    'END:VCALENDAR',
  ]
  return lines.map((line) => `${foldLine(line)}\r\n`).join('')
}

function linesOfEvent(event: CalendarEvent): readonly string[] {
  const { uid, revision, revisedAt, when, summary, place, description, isCancelled } = event
  return [
    'BEGIN:VEVENT',
    `UID:${textValue(uid)}`,
    // Without a METHOD the two say the same (RFC 5545, 3.8.7.2).
    `DTSTAMP:${utcOf(revisedAt)}`,
    `LAST-MODIFIED:${utcOf(revisedAt)}`,
    `SEQUENCE:${revision}`,
    ...linesOfTime(when),
    `SUMMARY:${lineValue(summary)}`,
    ...(place === '' ? [] : [`LOCATION:${lineValue(place)}`]),
    ...(description === '' ? [] : [`DESCRIPTION:${textValue(description)}`]),
    `STATUS:${isCancelled ? 'CANCELLED' : 'CONFIRMED'}`,
    'END:VEVENT',
  ]
}

function linesOfTime(when: EventTime): readonly string[] {
  if (when.kind === 'day') return [`DTSTART;VALUE=DATE:${when.day.replaceAll('-', '')}`]
  const { start, end } = when
  return [`DTSTART:${utcOf(start)}`, ...(end ? [`DTEND:${utcOf(end)}`] : [])]
}

/** `20260901T170000Z`: whole seconds. */
function utcOf(moment: Date): string {
  return `${moment.toISOString().slice(0, 19).replaceAll(/[-:]/g, '')}Z`
}
