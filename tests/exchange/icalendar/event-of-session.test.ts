import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { eventOfSession, type SessionInCalendar } from '#exchange/icalendar/event-of-session'
import { writeIcalendar } from '#exchange/icalendar/write-icalendar'

const names = ['Ada Fenn', 'Bo Larch', 'Maria de la Cruz']
const aSession = (session: Partial<SessionInCalendar> = {}): SessionInCalendar => ({
  id: 'one',
  squadName: 'Otters',
  kind: 'practice',
  day: '2026-09-08',
  title: '',
  startsAt: '18:00',
  place: 'The Meadow',
  lengthSeconds: 4500,
  themeName: 'Two against one',
  isCancelled: false,
  revision: 0,
  revisedAt: new Date('2026-09-01T12:00:00Z'),
  ...session,
})
const eventOf = (session: Partial<SessionInCalendar>, timeZone = 'Europe/London') =>
  eventOfSession(aSession(session), { timeZone, names })

describe('a session in a calendar', () => {
  it.each([
    [{}, 'Otters practice'],
    [{ kind: 'match', title: 'v Herons' } as const, 'Otters match, v Herons'],
    [{ isCancelled: true, title: 'Cup' }, 'Cancelled: Otters practice, Cup'],
  ])('is called after its squad: %j', (session, summary) => {
    expect(eventOf(session).summary).toBe(summary)
  })

  it.each(['Ada’s last day', 'with BO', 'Party at the Larches, Larch', 'Ada Fenn', 'Áda', 'María'])(
    'leaves out a title that names a child of the squad: %s',
    (title) => {
      expect(eventOf({ title }).summary).toBe('Otters practice')
    },
  )

  it.each(['Adaptation', 'Boots on', 'de facto', 'v La Mora', 'Cup'])('and keeps others: %s', (title) => {
    expect(eventOf({ title }).summary).toBe(`Otters practice, ${title}`)
  })

  it('leaves out a place or theme with a whole name only: people must find the ground', () => {
    expect(eventOf({ place: 'Larch Lane' }).place).toBe('Larch Lane')
    expect(eventOf({ place: 'garden of bo larch' }).place).toBe('')
    expect(eventOf({ themeName: 'As Ada Fenn showed' }).description).toBe('')
    expect(eventOf({}).description).toBe('Theme: Two against one')
    expect(eventOf({ themeName: null }).description).toBe('')
  })

  it('is a whole day where no time is known, and has no end where no length is', () => {
    expect(eventOf({ startsAt: null }).when).toEqual({ kind: 'day', day: '2026-09-08' })
    expect(eventOf({ lengthSeconds: null }).when).toMatchObject({ end: null })
  })

  // Instants of change from the IANA time zone database; Lord Howe moves its clocks by half an hour.
  it.each([
    ['Europe/London', '2026-03-28', '2026-03-28T18:00:00', '2026-03-28T19:15:00'],
    ['Europe/London', '2026-03-29', '2026-03-29T17:00:00', '2026-03-29T18:15:00'],
    ['Europe/London', '2026-10-24', '2026-10-24T17:00:00', '2026-10-24T18:15:00'],
    ['Europe/London', '2026-10-25', '2026-10-25T18:00:00', '2026-10-25T19:15:00'],
    ['America/New_York', '2026-03-07', '2026-03-07T23:00:00', '2026-03-08T00:15:00'],
    ['America/New_York', '2026-03-08', '2026-03-08T22:00:00', '2026-03-08T23:15:00'],
    ['America/New_York', '2026-10-31', '2026-10-31T22:00:00', '2026-10-31T23:15:00'],
    ['America/New_York', '2026-11-01', '2026-11-01T23:00:00', '2026-11-02T00:15:00'],
    ['Australia/Lord_Howe', '2026-04-04', '2026-04-04T07:00:00', '2026-04-04T08:15:00'],
    ['Australia/Lord_Howe', '2026-04-05', '2026-04-05T07:30:00', '2026-04-05T08:45:00'],
    ['Australia/Lord_Howe', '2026-10-03', '2026-10-03T07:30:00', '2026-10-03T08:45:00'],
    ['Australia/Lord_Howe', '2026-10-04', '2026-10-04T07:00:00', '2026-10-04T08:15:00'],
  ])('at six in the evening in %s on %s is read as %s to %s UTC', (timeZone, day, from, to) => {
    const events = [eventOf({ day }, timeZone)]
    const calendar = new ICAL.Component(ICAL.parse(writeIcalendar({ name: 'C', refreshHours: null, events })))
    const read = new ICAL.Event(calendar.getFirstSubcomponent('vevent') ?? undefined)
    expect([read.startDate, read.endDate].map(String)).toEqual([`${from}Z`, `${to}Z`])
    const local = new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short', timeStyle: 'short' })
    expect(local.format(read.startDate.toJSDate())).toBe(`${day} 18:00`)
  })

  it('of five hundred costs less than a second', () => {
    const squad = Array.from({ length: 16 }, (_, index) => `Name${index} Surname${index}`)
    const began = performance.now()
    const events = Array.from({ length: 500 }, (_, index) =>
      eventOfSession(aSession({ id: `${index}`, title: 'Ünder the lights, 字'.repeat(4) }), {
        timeZone: 'Australia/Lord_Howe',
        names: squad,
      }),
    )
    expect(writeIcalendar({ name: 'C', refreshHours: 4, events }).length).toBeGreaterThan(100_000)
    expect(performance.now() - began).toBeLessThan(1000)
  })
})
