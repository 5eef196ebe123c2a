import { describe, expect, it, vi } from 'vitest'
import { listAccounts } from '#data/accounts'
import { getSession, listSessions } from '#data/sessions'
import { cancelWritten, changeWhenAndWhere, enterSession as enterByForm } from '#server/session-actions'
import { redirectOf } from '../support/next-request'
import { aClubForWriting, askAs, eventsNow, idle, otherCoachId, write } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

describe('entering and cancelling', () => {
  const form = (change: Record<string, string> = {}) => {
    const fields = new FormData()
    const typed = {
      squadId: at.club.squadId,
      kind: 'practice',
      day: '2026-09-15',
      title: '',
      startsAt: '',
      lengthMinutes: '75',
      ...change,
    }
    for (const [name, value] of Object.entries(typed)) fields.set(name, value)
    return fields
  }
  const enter = (change?: Record<string, string>) => enterByForm(idle, form(change)).catch(redirectOf)
  const entered = () =>
    at.club.run((tx) => listSessions(tx, { squadId: at.club.squadId, from: '2026-09-15', to: '2026-09-15' }))

  it('a session is entered, and goes on to being written', async () => {
    const href = await enter()
    const [session] = await entered()
    expect(session).toMatchObject({
      kind: 'practice',
      lengthSeconds: 4500,
      written: 'notWritten',
      ledById: at.club.coach.personId,
    })
    expect(href).toBe(`/squads/${at.club.squadId}/sessions/${session?.id}/write`)
  })

  it('a form that is sent twice at once enters one session, and a second one needs another title or time', async () => {
    const answers = await Promise.all([enter(), enter(), enter()])
    expect(await entered()).toHaveLength(1)
    expect(answers.filter((answer) => typeof answer === 'object')).toMatchObject([
      { status: 'refused', problems: [{ path: 'title' }] },
      { status: 'refused', problems: [{ path: 'title' }] },
    ])
    await enter({ title: 'Second group' })
    await enter({ startsAt: '19:00' })
    expect(await entered()).toHaveLength(3)
  })

  it('a match has periods of one length with breaks', async () => {
    await enter({ kind: 'match', periodCount: '2', periodMinutes: '20', breakMinutes: '10' })
    expect(await entered()).toMatchObject([
      {
        kind: 'match',
        periods: [
          { start: 0, end: 1200 },
          { start: 1800, end: 3000 },
        ],
      },
    ])
  })

  it.each([
    ['a day that is none', { day: '2026-02-30' }, 'day'],
    ['a day of no season', { day: '2031-02-20' }, 'day'],
    ['a time that is none', { startsAt: '25:00' }, 'startsAt'],
    ['a length that is none', { lengthMinutes: '-5' }, 'lengthMinutes'],
    ['somebody who does not coach the squad', { ledById: otherCoachId }, 'ledById'],
    ['a design that is not there', { designId: otherCoachId }, 'designId'],
  ])('%s is refused at its field, with what was typed', async (_what, change, path) => {
    expect(await enter(change)).toMatchObject({
      status: 'refused',
      problems: [{ path }],
      typed: { lengthMinutes: expect.anything() },
    })
    expect(await entered()).toEqual([])
  })

  it.each(['otherCoach', 'guardian'] as const)('is refused to a %s', async (person) => {
    askAs(at.club, person)
    expect(await enter()).toMatchObject({ status: 'refused' })
    expect(await entered()).toEqual([])
    const fields = new FormData()
    fields.set('squadId', at.club.squadId)
    fields.set('sessionId', at.sessionId)
    expect(await cancelWritten(idle, fields)).toMatchObject({ status: 'refused' })
    expect(await at.club.run((tx) => getSession(tx, at.sessionId))).toMatchObject({ isCancelled: false })
  })

  it('a cancelled session counts for nothing, and what was written of it stays', async () => {
    await write(at)
    const fields = new FormData()
    fields.set('squadId', at.club.squadId)
    fields.set('sessionId', at.sessionId)
    expect(await cancelWritten(idle, fields)).toMatchObject({ status: 'done' })
    const days = { squadId: at.club.squadId, from: '2026-09-08', to: '2026-09-08' }
    expect(await at.club.run((tx) => listAccounts(tx, days))).toEqual([])
    expect(await eventsNow(at)).toHaveLength(4)
  })

  it('a session to come is entered and goes on to its own page; nothing can be written of it yet', async () => {
    const href = await enter({ day: '2026-10-06' })
    const days = { squadId: at.club.squadId, from: '2026-10-06', to: '2026-10-06' }
    const [session] = await at.club.run((tx) => listSessions(tx, days))
    expect(href).toBe(`/squads/${at.club.squadId}/sessions/${session?.id}`)
    at.sessionId = session?.id ?? ''
    expect(await write(at)).toMatchObject({
      status: 'refused',
      problems: [{ message: 'This session is still to come: it can be written down from its day on.' }],
    })
    expect(await eventsNow(at)).toEqual([])
  })

  it('title, time and place can be changed; the day of what is written down stays', async () => {
    const change = (typed: Record<string, string>) => {
      const fields = new FormData()
      const session = { squadId: at.club.squadId, sessionId: at.sessionId }
      const asEntered = { day: '2026-09-08', title: '', startsAt: '', place: '' }
      for (const [name, value] of Object.entries({ ...session, ...asEntered, ...typed }))
        fields.set(name, value)
      return changeWhenAndWhere(idle, fields)
    }
    const stands = () => at.club.run((tx) => getSession(tx, at.sessionId))
    const moved = { day: '2026-09-09', title: 'Moved', startsAt: '17:30', place: 'Lower field' }
    expect(await change(moved)).toMatchObject({ status: 'done' })
    expect(await stands()).toMatchObject(moved)
    expect(await change({ ...moved, day: '2031-02-20' })).toMatchObject({ problems: [{ path: 'day' }] })
    await write(at)
    expect(await change({ ...moved, day: '2026-09-10' })).toMatchObject({ problems: [{ path: 'day' }] })
    expect(await change({ ...moved, place: 'Upper field' })).toMatchObject({ status: 'done' })
    askAs(at.club, 'otherCoach')
    expect(await change({ ...moved, title: 'Mine' })).toMatchObject({ status: 'refused' })
    expect(await stands()).toMatchObject({ ...moved, place: 'Upper field' })
  })

  it('nothing can be written of a cancelled session', async () => {
    const fields = new FormData()
    fields.set('squadId', at.club.squadId)
    fields.set('sessionId', at.sessionId)
    await cancelWritten(idle, fields)
    expect(await write(at)).toMatchObject({
      status: 'refused',
      problems: [{ message: expect.stringContaining('was cancelled') }],
    })
  })
})
