import fc from 'fast-check'
import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import type { CalendarEvent } from '#exchange/icalendar/calendar-event'
import { writeIcalendar } from '#exchange/icalendar/write-icalendar'

// All of Unicode but halves of characters, which no text that is kept has.
const anyCharacter = fc
  .oneof(
    fc.integer({ min: 0, max: 0xff }),
    fc.integer({ min: 0, max: 0xd7ff }),
    fc.integer({ min: 0xe000, max: 0x10ffff }),
  )
  .map((point) => String.fromCodePoint(point))
const anEvent = (event: Partial<CalendarEvent> = {}): CalendarEvent => ({
  uid: 'one',
  revision: 0,
  revisedAt: new Date('2026-09-01T12:00:00.500Z'),
  when: { kind: 'time', start: new Date('2026-09-08T17:00:00Z'), end: new Date('2026-09-08T18:15:00Z') },
  summary: 'Otters practice',
  place: 'The Meadow',
  description: 'Theme: Two against one',
  isCancelled: false,
  ...event,
})
const written = (...events: readonly CalendarEvent[]) =>
  writeIcalendar({ name: 'Reedwater', refreshHours: 4, events })

/** Read by ical.js, which has no line in common with ours. */
function readBack(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text))
  const events = calendar.getAllSubcomponents('vevent')
  return { calendar, events: events.map((one) => ({ one, event: new ICAL.Event(one) })) }
}

// RFC 5545, 3.1: name *(";" param) ":" value, no control character but the tab, a break after each.
const contentLine = /^[A-Z0-9-]+(?:;[A-Z0-9-]+=[A-Z0-9-]+)*:[^\p{Cc}]*(?:\t[^\p{Cc}]*)*$/u

function linesOf(text: string): readonly string[] {
  const lines = text.replaceAll('\r\n ', '').split('\r\n')
  expect(lines.at(-1)).toBe('')
  return lines.slice(0, -1)
}

describe('a calendar', () => {
  it('has the first example of RFC 5545, 3.6.1, as that has it', () => {
    const text = written(
      anEvent({
        uid: '19970901T130000Z-123401@example.com',
        revisedAt: new Date('1997-09-01T13:00:00Z'),
        when: {
          kind: 'time',
          start: new Date('1997-09-03T16:30:00Z'),
          end: new Date('1997-09-03T19:00:00Z'),
        },
        summary: 'Annual Employee Review',
      }),
    )
    expect(linesOf(text)).toEqual(
      expect.arrayContaining([
        'BEGIN:VEVENT',
        'UID:19970901T130000Z-123401@example.com',
        'DTSTAMP:19970901T130000Z',
        'DTSTART:19970903T163000Z',
        'DTEND:19970903T190000Z',
        'SUMMARY:Annual Employee Review',
        'END:VEVENT',
      ]),
    )
  })

  it('is read by another program as it was meant', () => {
    const { calendar, events } = readBack(
      written(
        anEvent({ revision: 3, isCancelled: true }),
        anEvent({ uid: 'two', when: { kind: 'day', day: '2026-10-25' }, place: '', description: '' }),
        anEvent({ uid: 'three', when: { kind: 'time', start: new Date('2026-12-31T23:30:00Z'), end: null } }),
      ),
    )
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0')
    expect(calendar.getFirstPropertyValue('name')).toBe('Reedwater')
    expect(String(calendar.getFirstPropertyValue('refresh-interval'))).toBe('PT4H')
    const [timed, whole, open] = events
    expect(timed?.event).toMatchObject({
      uid: 'one',
      summary: 'Otters practice',
      location: 'The Meadow',
      sequence: 3,
    })
    expect(timed?.event.startDate.toJSDate().toISOString()).toBe('2026-09-08T17:00:00.000Z')
    expect(timed?.event.endDate.toJSDate().toISOString()).toBe('2026-09-08T18:15:00.000Z')
    expect(timed?.event.startDate.zone.tzid).toBe('UTC')
    expect(timed?.one.getFirstPropertyValue('status')).toBe('CANCELLED')
    expect(String(timed?.one.getFirstPropertyValue('last-modified'))).toBe('2026-09-01T12:00:00Z')
    expect(whole?.event.startDate.isDate).toBe(true)
    expect(whole?.event.startDate.toString()).toBe('2026-10-25')
    // RFC 5545, 3.6.1: a date without an end is that one day.
    expect(whole?.event.endDate.toString()).toBe('2026-10-26')
    expect(whole?.one.hasProperty('location')).toBe(false)
    expect(open?.event.duration.toSeconds()).toBe(0)
  })

  it('has what RFC 5545 asks of every calendar and entry, once (3.6, 3.6.1), and nothing it does not know', () => {
    const { calendar, events } = readBack(written(anEvent(), anEvent({ uid: 'two' })))
    const names = (of: { getAllProperties: () => { name: string }[] }) =>
      of.getAllProperties().map(({ name }) => name)
    const ofCalendar = ['version', 'prodid', 'calscale', 'name', 'x-wr-calname', 'refresh-interval']
    expect(names(calendar)).toEqual(ofCalendar)
    const ofEvent = ['uid', 'dtstamp', 'last-modified', 'sequence', 'dtstart', 'dtend', 'summary', 'location']
    for (const { one } of events) expect(names(one)).toEqual([...ofEvent, 'description', 'status'])
  })

  it('of nothing is a calendar still, which empties the one that was followed', () => {
    const { events } = readBack(written())
    expect(events).toEqual([])
  })

  it('keeps what was typed, and nothing that was typed breaks out of its line', () => {
    const hostile = fc.oneof(
      fc.string({ unit: anyCharacter, maxLength: 120 }),
      fc.constantFrom(
        'a\r\nEND:VCALENDAR',
        '\\',
        '\\\\n,;:"',
        'x'.repeat(500),
        '🦔'.repeat(60),
        '\u0000\u001b[31m',
      ),
    )
    const tidy = (text: string) =>
      text.replaceAll(/\r\n|[\r\u0085\u2028\u2029]/g, '\n').replaceAll(/[^\P{Cc}\t\n]/gu, '')
    fc.assert(
      fc.property(hostile, hostile, hostile, (summary, place, description) => {
        const text = written(anEvent({ summary, place, description }), anEvent({ uid: 'two' }))
        expect(linesOf(text).filter((line) => !contentLine.test(line))).toEqual([])
        const { events } = readBack(text)
        expect(events).toHaveLength(2)
        const { event } = events[0] as (typeof events)[number]
        const oneLine = (value: string) => tidy(value.replaceAll(/[\s\u0085]+/g, ' ').trim())
        expect([event.summary, event.location ?? '', event.description ?? '']).toEqual([
          oneLine(summary),
          place === '' ? '' : oneLine(place),
          tidy(description),
        ])
      }),
      { numRuns: 200 },
    )
  })

  it('is the same bytes for the same sessions', () => {
    expect(written(anEvent())).toBe(written(anEvent()))
  })
})
