import ICAL from 'ical.js'
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { recordAdult } from '#data/adults'
import { listAudit } from '#data/audit'
import { findCalendarFeed, findStandingFeed, revokeCalendarFeeds } from '#data/calendar-feeds'
import { changeClub } from '#data/clubs'
import { recordDesigns } from '#data/designs'
import { eraseChild } from '#data/erasures'
import { recordGuardianships } from '#data/guardianships'
import { newId } from '#data/ids'
import { endMembership, recordMemberships } from '#data/memberships'
import { cancelSession, changeSession, recordSessions } from '#data/sessions'
import { changeShowsComing } from '#data/shows-coming'
import { recordSquadCoach } from '#data/squad-coaches'
import { recordSquads } from '#data/squads'
import { makeCalendarOf, takeBackCalendarOf } from '#server/calendar-deeds'
import { answerCalendar } from '#server/calendar-door'
import { findCalendarOf } from '#server/calendar-feed'
import { removeGuardianOf, withholdComingOf } from '#server/change-guardianship'
import { endAccessOf, giveAccessBackOf } from '#server/change-people'
import { type LinkCode, newSecret, textOfCode } from '#server/link-code'
import { aSheet } from '../support/design-builder'
import { aLinkingClub, type LinkingClub } from '../support/linking-club'
import { askAsPerson } from '../support/next-request'
import { aSession, noon, ownerDatabase } from '../support/test-club'

// Next's own request does not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))

const address = 'https://book.example.org'
const nobody = { ok: false, reasons: [{ path: '' }] }

let at: LinkingClub
let owls: string
let ids: Record<'past' | 'coming' | 'match' | 'owls', string>

beforeEach(async () => {
  askAsPerson(null)
  at = await aLinkingClub()
  owls = newId()
  ids = { past: newId(), coming: newId(), match: newId(), owls: newId() }
  const { squadId, guardianId, childId } = at
  await at.run(async (tx) => {
    await recordSquads(tx, [{ id: owls, name: 'Owls', ageLimit: 12 }])
    await recordGuardianships(tx, [{ personId: guardianId, playerId: childId, claimedAt: noon }])
    await changeShowsComing(tx, { squadId, showsComing: true })
    const evening = { startsAt: '18:00', lengthSeconds: 4500, place: 'The Meadow' }
    await recordSessions(tx, [
      aSession({ squadId, id: ids.past, day: '2026-08-25', ...evening }),
      aSession({ squadId, id: ids.coming, day: '2026-09-08', ...evening, title: 'With Ada Fenn' }),
      aSession({
        squadId,
        id: ids.match,
        day: '2026-09-12',
        kind: 'match',
        title: 'v Herons',
        startsAt: '10:00',
      }),
      aSession({ squadId: owls, id: ids.owls, day: '2026-09-09', ...evening }),
    ])
  })
})

async function codeOf(personId: string, squadIds: readonly string[] = []): Promise<LinkCode> {
  const made = await makeCalendarOf(await at.viewerOf(personId), { squadIds, address })
  const [clubId = '', linkId = '', secret = ''] =
    /calendar\/(.*)\.ics/.exec(JSON.stringify(made))?.[1]?.split('.') ?? []
  return { clubId, linkId, secret }
}
const administrator = () => at.viewerOf(at.administratorId)

/** The entries of a calendar by their id, as another program reads them; null: there is no calendar. */
async function read(code: LinkCode, now = noon) {
  const text = await findCalendarOf(code, now)
  if (text === null) return null
  const entries = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent')
  return new Map(entries.map((one) => [String(one.getFirstPropertyValue('uid')), new ICAL.Event(one)]))
}
const idsIn = async (code: LinkCode) => [...((await read(code))?.keys() ?? ['no calendar'])]

describe('a calendar shows', () => {
  it('a coach all of the own squads, lately held ones too', async () => {
    expect(await idsIn(await codeOf(at.coach.personId))).toEqual([ids.past, ids.coming, ids.match])
  })

  it('a head coach every squad, or those that were chosen', async () => {
    expect(await idsIn(await codeOf(at.headCoachId))).toEqual([ids.past, ids.coming, ids.owls, ids.match])
    expect(await idsIn(await codeOf(at.headCoachId, [owls]))).toEqual([ids.owls])
  })

  it('a guardian what comes for the own child, from its first day in the squad to its last', async () => {
    const code = await codeOf(at.guardianId)
    expect(await idsIn(code)).toEqual([ids.coming, ids.match])
    await at.run((tx) =>
      endMembership(tx, { squadId: at.squadId, playerId: at.childId, lastDay: '2026-09-10' }),
    )
    expect(await idsIn(code)).toEqual([ids.coming])
  })

  it('when, where and for how long, in UTC, and nobody’s name', async () => {
    const code = await codeOf(at.guardianId)
    const text = (await findCalendarOf(code, noon)) ?? ''
    expect(text).not.toMatch(/Ada|Fenn/)
    const entry = (await read(code))?.get(ids.coming)
    expect(entry).toMatchObject({ summary: 'Otters practice', location: 'The Meadow', sequence: 0 })
    expect([entry?.startDate, entry?.endDate].map(String)).toEqual([
      '2026-09-08T17:00:00Z',
      '2026-09-08T18:15:00Z',
    ])
    const match = (await read(code))?.get(ids.match)
    expect(match).toMatchObject({ summary: 'Otters match, v Herons' })
    expect(match?.duration.toSeconds()).toBe(1200)
  })

  it('what it is to be about: the theme planned, else that of its design', async () => {
    const code = await codeOf(at.coach.personId)
    const about = async () => (await read(code))?.get(ids.coming)?.description
    expect(await about()).toBeFalsy()
    const design = aSheet({ themeId: at.themeIds[0] })
    await at.run((tx) => recordDesigns(tx, [design]))
    await at.run((tx) => changeSession(tx, ids.coming, { designId: design.id }))
    expect(await about()).toBe('Theme: Attacking')
    await at.run((tx) => changeSession(tx, ids.coming, { themeId: at.themeIds[1] }))
    expect(await about()).toBe('Theme: Two against one')
    expect((await read(code))?.get(ids.coming)?.sequence).toBe(2)
    expect((await read(await codeOf(at.guardianId)))?.get(ids.coming)?.description).toBe(
      'Theme: Two against one',
    )
  })

  it('a change with a higher number and a later moment each time, under the same name', async () => {
    const code = await codeOf(at.coach.personId)
    const seen = async () => {
      const entry = (await read(code))?.get(ids.coming)
      const { component } = entry as ICAL.Event
      const [status, changed] = ['status', 'last-modified'].map((name) =>
        component.getFirstPropertyValue(name),
      )
      return { start: String(entry?.startDate), sequence: entry?.sequence, status, changed: String(changed) }
    }
    const first = await seen()
    expect(first).toMatchObject({ sequence: 0, status: 'CONFIRMED' })
    await at.run((tx) => changeSession(tx, ids.coming, { day: '2026-10-27', place: 'Hall' }))
    const moved = await seen()
    expect(moved).toMatchObject({ start: '2026-10-27T18:00:00Z', sequence: 1, status: 'CONFIRMED' })
    expect(moved.changed >= first.changed).toBe(true)
    // What no calendar shows is no change of it.
    await at.run((tx) => changeSession(tx, ids.coming, { ledById: at.headCoachId, place: 'Hall' }))
    expect((await seen()).sequence).toBe(1)
    await at.run((tx) => cancelSession(tx, { sessionId: ids.coming, by: at.coach }))
    expect(await seen()).toMatchObject({ sequence: 2, status: 'CANCELLED' })
  })

  it('the hour of the club’s clock, whatever zone it is in', async () => {
    await at.run((tx) => changeClub(tx, { name: 'Reedwater, "Old; New"', timeZone: 'America/New_York' }))
    const code = await codeOf(at.coach.personId)
    expect(String((await read(code))?.get(ids.coming)?.startDate)).toBe('2026-09-08T22:00:00Z')
    // RFC 7986, 5.1, and RFC 5545, 3.3.11: a name is a text; ical.js does not know the property.
    expect(await findCalendarOf(code, noon)).toContain('\r\nNAME:Reedwater\\, "Old\\; New"\r\n')
  })
})

describe('a calendar shows no longer', () => {
  it('to a guardian, once the squad stops telling, it is withheld, or the page is closed', async () => {
    const code = await codeOf(at.guardianId)
    const tell = (showsComing: boolean) =>
      at.run((tx) => changeShowsComing(tx, { squadId: at.squadId, showsComing }))
    await tell(false)
    expect(await idsIn(code)).toEqual([])
    await tell(true)
    const of = { personId: at.guardianId, playerId: at.childId }
    await withholdComingOf(await administrator(), { ...of, withholdsComing: true })
    expect(await idsIn(code)).toEqual([])
    await withholdComingOf(await administrator(), { ...of, withholdsComing: false })
    expect(await idsIn(code)).toHaveLength(2)
    await removeGuardianOf(await administrator(), of)
    // Empty and not gone, so that the program of whoever followed it forgets what it had.
    expect(await idsIn(code)).toEqual([])
    expect(await makeCalendarOf(await at.viewerOf(at.guardianId), { squadIds: [], address })).toMatchObject(
      nobody,
    )
  })

  it('to a guardian whose link has not been used', async () => {
    const { otherGuardianId: personId, childId: playerId } = at
    await at.run((tx) => recordGuardianships(tx, [{ personId, playerId }]))
    expect(await makeCalendarOf(await at.viewerOf(personId), { squadIds: [], address })).toMatchObject(nobody)
  })

  it('to a coach, another squad’s', async () => {
    const personId = newId()
    await at.run(async (tx) => {
      await recordAdult(tx, { id: personId, name: 'Ivo Weld', role: 'coach', email: null })
      const days = { firstDay: '2020-01-01', lastDay: null }
      await recordSquadCoach(tx, { squadId: owls, personId, kind: 'cover', ...days })
    })
    expect(await idsIn(await codeOf(personId))).toEqual([ids.owls])
    const others = await makeCalendarOf(await at.viewerOf(personId), { squadIds: [at.squadId], address })
    expect(others).toMatchObject({ ok: false, reasons: [{ message: expect.stringContaining('not yours') }] })
    const code = await codeOf(personId, [owls])
    await at.run((tx) =>
      tx.db.squadCoach.updateMany({ where: { personId }, data: { lastDay: new Date('2020-02-01') } }),
    )
    expect(await idsIn(code)).toEqual([])
  })

  it('to a helper, what is not its child’s', async () => {
    const personId = newId()
    await at.run(async (tx) => {
      await recordAdult(tx, { id: personId, name: 'Ivo Weld', role: 'helper', email: null })
      const days = { firstDay: '2020-01-01', lastDay: null }
      await recordSquadCoach(tx, { squadId: at.squadId, personId, kind: 'helps', ...days })
    })
    expect(await makeCalendarOf(await at.viewerOf(personId), { squadIds: [], address })).toMatchObject(nobody)
  })

  it('to anybody once it is replaced, taken back, or the access has ended, even if that is given back', async () => {
    const [first, second] = [await codeOf(at.coach.personId), await codeOf(at.coach.personId)]
    expect([await read(first), (await read(second))?.size]).toEqual([null, 3])
    expect(await takeBackCalendarOf(await at.viewerOf(at.coach.personId))).toMatchObject({ ok: true })
    expect(await read(second)).toBeNull()
    expect(await takeBackCalendarOf(await at.viewerOf(at.coach.personId))).toMatchObject(nobody)
    const third = await codeOf(at.coach.personId)
    await endAccessOf(await administrator(), { personId: at.coach.personId })
    expect(await read(third)).toBeNull()
    await giveAccessBackOf(await administrator(), { personId: at.coach.personId })
    expect(await read(third)).toBeNull()
  })

  it('anything of a child that was erased, and the feed of its only guardian is gone', async () => {
    const code = await codeOf(at.guardianId)
    await at.run((tx) => eraseChild(tx, { playerId: at.childId, cause: 'request', by: at.coach }))
    expect(await read(code)).toBeNull()
    expect(await at.run((tx) => findCalendarFeed(tx, code.linkId))).toBeNull()
  })
})

describe('the code of a calendar', () => {
  it('is one in 2^256, is nowhere kept, and says nothing of the child', async () => {
    const code = await codeOf(at.guardianId)
    expect(Buffer.from(code.secret, 'base64url')).toHaveLength(32)
    const row = await ownerDatabase().calendarFeed.findFirstOrThrow({ where: { id: code.linkId } })
    const digest = await crypto.subtle.digest('SHA-256', Buffer.from(code.secret))
    expect(row.secretHash).toBe(Buffer.from(digest).toString('hex'))
    const deeds = await at.run((tx) => listAudit(tx, { limit: 1 }))
    expect(deeds).toMatchObject([{ action: 'makeCalendar', objectId: at.guardianId }])
    expect(JSON.stringify([row, deeds])).not.toContain(code.secret)
  })

  it('opens nothing in another club, for another person, or with another secret', async () => {
    const [own, other] = [await codeOf(at.coach.personId), await aLinkingClub('Elsewhere')]
    const heads = await codeOf(at.headCoachId)
    for (const wrong of [
      { ...own, clubId: other.club.id },
      { ...own, clubId: newId() },
      { ...own, linkId: heads.linkId },
      { ...own, linkId: newId() },
      { ...own, secret: newSecret() },
    ])
      expect(await findCalendarOf(wrong, noon).catch(({ code }) => code)).toSatisfy(
        (answer) => answer === null || answer === 'notFound',
      )
  })

  it('notes the day it was last read on by the club’s clock, not the minute', async () => {
    const code = await codeOf(at.coach.personId)
    const lastRead = async () => (await at.run((tx) => findStandingFeed(tx, at.coach.personId)))?.lastReadOn
    expect(await lastRead()).toBeNull()
    await findCalendarOf({ ...code, secret: newSecret() }, noon)
    expect(await lastRead()).toBeNull()
    await findCalendarOf(code, new Date('2026-09-08T23:30:00Z'))
    expect(await lastRead()).toBe('2026-09-09')
  })
})

describe('the door of calendars', () => {
  const ask = (text: string, headers: Record<string, string> = {}) =>
    answerCalendar(new Request(`${address}/calendar/x`, { headers }), text, noon)

  it('gives a calendar that is to be asked for again, and nothing anew to whoever has it', async () => {
    const code = textOfCode(await codeOf(at.coach.personId))
    const given = await ask(`${code}.ics`)
    expect(given.status).toBe(200)
    expect(given.headers.get('content-type')).toBe('text/calendar; charset=utf-8')
    expect(given.headers.get('cache-control')).toBe('private, no-cache')
    expect(await given.text()).toMatch(/^BEGIN:VCALENDAR\r\n.*\r\nEND:VCALENDAR\r\n$/s)
    const mark = given.headers.get('etag') ?? ''
    expect(mark).toMatch(/^"[\w-]{43}"$/)
    for (const known of [mark, `W/${mark}`, `"other", ${mark}`, '*']) {
      const again = await ask(code, { 'if-none-match': known })
      expect([again.status, await again.text(), again.headers.get('etag')]).toEqual([304, '', mark])
    }
    await at.run((tx) => changeSession(tx, ids.coming, { place: 'Hall' }))
    expect((await ask(code, { 'if-none-match': mark })).status).toBe(200)
  })

  it('says the same, word for word, of every code that opens nothing', async () => {
    const code = await codeOf(at.coach.personId)
    const stranger = { ...code, linkId: newId() }
    await at.run((tx) => revokeCalendarFeeds(tx, { personId: at.coach.personId, at: noon }))
    const texts = [
      ...[code, stranger, { ...code, secret: newSecret() }, { ...code, clubId: newId() }].map(textOfCode),
      ...['', '.ics', 'a.b.c', `${textOfCode(code)}.ics.ics`, `${at.club.id}`, '%00', 'x'.repeat(5000)],
    ]
    const answers = await Promise.all(texts.map((text) => ask(text)))
    const said = answers.map(async (answer) =>
      JSON.stringify([answer.status, [...answer.headers], await answer.text()]),
    )
    expect(new Set(await Promise.all(said)).size).toBe(1)
    expect(answers[0]?.status).toBe(404)
  })
})

describe('a large club', () => {
  beforeAll(() => askAsPerson(null))
  it('of five hundred sessions is read without a wait', async () => {
    const code = await codeOf(at.headCoachId)
    const days = Array.from({ length: 500 }, (_, index) => new Date(Date.UTC(2026, 7, 1 + (index % 300))))
    await at.run(async (tx) => {
      await recordSessions(
        tx,
        days.map((day) =>
          aSession({
            squadId: at.squadId,
            day: day.toISOString().slice(0, 10),
            startsAt: '18:00',
            title: 'Ünder lights',
          }),
        ),
      )
      await recordMemberships(tx, {
        squadId: owls,
        memberships: at.playerIds.map((playerId) => ({ playerId, firstDay: '2026-08-01', lastDay: null })),
      })
    })
    const began = performance.now()
    const text = await findCalendarOf(code, noon)
    // A tenth of a second on an idle machine; far more with each session asked for by itself.
    expect(performance.now() - began).toBeLessThan(3000)
    expect(text?.match(/BEGIN:VEVENT/g)).toHaveLength(504)
  })
})
