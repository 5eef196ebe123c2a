import { beforeEach, describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { listClosedDays } from '#data/closed-days'
import { listGroundSizes } from '#data/ground-sizes'
import { inClub } from '#data/in-club'
import { listAway } from '#data/player-away'
import { listSessions } from '#data/sessions'
import { loadClubSeasons } from '#server/club-views'
import { loadPlayerBook } from '#server/player-views'
import { loadWeekly } from '#server/weekly-views'
import {
  addAway,
  addClosedDays,
  addClubClosedDays,
  enterWeekly,
  removeAway,
  removeClosedDays,
  removeClubClosedDays,
  removeGround,
  setGround,
} from '#server/weeks-actions'
import { formOfFields } from '../support/form-of-fields'
import { enterSession } from '../support/test-club'
import { type Asker, aClubForWriting, askAs, idle, viewerOf } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

// It is Thursday, 1 October 2026 in the club.
const year = { from: '2026-10-01', to: '2027-07-31' }
type Fields = Readonly<Record<string, string>>
const form = (fields: Fields) => formOfFields({ squadId: at.club.squadId, ...fields })
const ofPlayer = (fields: Fields) => form({ playerId: at.club.playerIds[0] ?? '', ...fields })
const fair = { name: '  Fair   on the field ', firstDay: '2026-10-13', lastDay: '' }
const asked = {
  ...{ weekday: '2', firstDay: '2026-10-01', lastDay: '2026-10-27' },
  ...{ startsAt: '17:00', place: 'Long Meadow', lengthMinutes: '60' },
}
const practices = () =>
  at.club.run(async (tx) =>
    (await listSessions(tx, { squadId: at.club.squadId, kind: 'practice', ...year })).map(({ day }) => day),
  )
const closed = (squadId: string | null = at.club.squadId) =>
  at.club.run((tx) => listClosedDays(tx, { squadId }))
const away = () => at.club.run((tx) => listAway(tx, { playerIds: at.club.playerIds, ...year }))
const deeds = async () =>
  (await at.club.run((tx) => listAudit(tx, { limit: 20 }))).map(({ action }) => action).sort()
const show = async (query: Fields = asked, who: Asker = 'coach') =>
  loadWeekly(await viewerOf(at, who), {
    squadId: at.club.squadId,
    query,
    now: new Date('2026-10-01T12:00:00Z'),
  })
const daysShown = async (query: Fields = asked) => {
  const { found } = await show(query)
  return found?.ok ? found.value.add.join() : ''
}
/** Where it is gone to travels as a throw of Next's. */
const enter = async (fields: Fields) =>
  enterWeekly(idle, form(fields)).catch((error: { digest?: string }) => ({ wentTo: error.digest }))
const refused = (text: string | RegExp) => ({
  status: 'refused',
  problems: [
    {
      message: typeof text === 'string' ? expect.stringContaining(text) : expect.stringMatching(text),
    },
  ],
})

describe('the doors of days without practice, grounds, days away and weekly practices', () => {
  const everyDoor = async () => [
    await addClosedDays(idle, form(fair)),
    await setGround(idle, form({ place: 'Long Meadow', lengthM: '60', widthM: '40' })),
    await addAway(idle, ofPlayer({ firstDay: '2026-10-06', lastDay: '2026-10-20' })),
  ]

  it.each(['otherCoach', 'guardian'] as const)('are closed to %s, and nothing changes', async (who) => {
    askAs(at.club, who)
    const answers = [
      ...(await everyDoor()),
      await enter({ ...asked, days: '2026-10-06,2026-10-13,2026-10-20,2026-10-27' }),
      await addClubClosedDays(idle, form(fair)),
    ]
    for (const answer of answers) expect(answer).toMatchObject(refused('not yours to change'))
    expect([await closed(), await away(), await practices()]).toEqual([[], [], []])
    await expect(show(asked, who)).rejects.toMatchObject({ code: 'notAllowed' })
    expect(await deeds()).toEqual([])
  })

  it.each(['coach', 'headCoach'] as const)(
    'are open to %s, each with its line in the record',
    async (who) => {
      askAs(at.club, who)
      for (const answer of await everyDoor()) expect(answer).toMatchObject({ status: 'done' })
      const days = await daysShown()
      expect(await enter({ ...asked, days })).toMatchObject({ wentTo: expect.stringContaining('/sessions') })
      const [span] = await closed()
      const [own] = await away()
      for (const answer of [
        await removeClosedDays(idle, form({ closedId: span?.id ?? '' })),
        await removeGround(idle, form({ place: 'Long Meadow' })),
        await removeAway(idle, ofPlayer({ awayId: own?.id ?? '' })),
      ])
        expect(answer).toMatchObject({ status: 'done' })
      expect([await closed(), await away(), await at.club.run(listGroundSizes)]).toEqual([[], [], []])
      expect(await deeds()).toEqual([
        ...['addClosedDays', 'changeAway', 'changeAway', 'enterWeekly'],
        ...['removeClosedDays', 'removeGround', 'setGround'],
      ])
    },
  )

  it('of the whole club are the head coach’s, and a squad’s form does not reach its days', async () => {
    expect(await addClubClosedDays(idle, form(fair))).toMatchObject(refused('not yours to change'))
    askAs(at.club, 'headCoach')
    expect(await addClubClosedDays(idle, form(fair))).toMatchObject({ status: 'done' })
    const [span] = await closed(null)
    expect(span).toMatchObject({ squadId: null, name: 'Fair on the field', lastDay: '2026-10-13' })
    const page = await loadClubSeasons(await viewerOf(at, 'headCoach'), new Date('2026-10-01T12:00:00Z'))
    expect(page.closed).toEqual([span])
    askAs(at.club, 'coach')
    const taken = { closedId: span?.id ?? '' }
    expect(await removeClosedDays(idle, form(taken))).toMatchObject(refused('not in the list any more'))
    askAs(at.club, 'headCoach')
    expect(await removeClubClosedDays(idle, form(taken))).toMatchObject({ status: 'done' })
  })
})

describe('weekly practices', () => {
  it('are shown before anything is added, around days without practice and days that have one', async () => {
    await addClosedDays(idle, form(fair))
    await enterSession(at.club, { day: '2026-10-20' })
    const { found } = await show()
    expect(found).toEqual({
      ok: true,
      value: {
        add: ['2026-10-06', '2026-10-27'],
        skipped: [
          { day: '2026-10-13', why: 'closed', name: 'Fair on the field' },
          { day: '2026-10-20', why: 'taken', name: '' },
        ],
      },
    })
    expect(await practices()).toEqual(['2026-10-20'])
    await enter({ ...asked, days: '2026-10-06,2026-10-27' })
    expect(await practices()).toEqual(['2026-10-06', '2026-10-20', '2026-10-27'])
    const [first] = await at.club.run((tx) =>
      listSessions(tx, { squadId: at.club.squadId, from: '2026-10-06', to: '2026-10-06' }),
    )
    expect(first).toMatchObject({
      ...{ startsAt: '17:00', place: 'Long Meadow', lengthSeconds: 3600, written: 'notWritten' },
      ledById: at.club.coach.personId,
    })
  })

  it('are added as they were shown, or not at all', async () => {
    const days = await daysShown()
    await addClosedDays(idle, form(fair))
    expect(await enter({ ...asked, days })).toMatchObject(refused('Something has changed'))
    expect(await practices()).toEqual([])
  })

  it('sent twice at once are added once', async () => {
    const days = await daysShown()
    await Promise.all([enter({ ...asked, days }), enter({ ...asked, days })])
    expect((await practices()).join()).toBe(days)
  })

  it('are refused with what would be right', async () => {
    const wrong = [
      [{ firstDay: '2026-09-30' }, 'firstDay', /is over; begin with today, 2026-10-01/],
      [{ lastDay: '2030-01-01' }, 'lastDay', /is after the season/],
      [{ firstDay: '2029-01-01', lastDay: '2029-02-01' }, 'firstDay', /in no season/],
      [{ lastDay: '2026-09-01' }, 'lastDay', /before the first day, 2026-10-01/],
      [{ weekday: '8' }, 'weekday', /choose a day of the week/],
      [{ startsAt: '25:00' }, 'startsAt', /such as 17:30/],
      [{ lengthMinutes: '0' }, 'lengthMinutes', /1 to 600/],
      [{ firstDay: '2026-02-30' }, 'firstDay', /a day of the calendar/],
    ] as const
    for (const [change, path, message] of wrong) {
      const query = { ...asked, ...change }
      const problem = { path, message: expect.stringMatching(message) }
      expect((await show(query)).found).toEqual({ ok: false, reasons: [problem] })
      expect(await enter({ ...query, days: '' })).toMatchObject({ problems: [problem] })
    }
  })
})

describe('days away, days without and grounds', () => {
  let playerId = ''
  beforeEach(() => {
    playerId = at.club.playerIds[0] ?? ''
  })

  it('stand on the player’s page from today on, without a reason', async () => {
    await addAway(idle, ofPlayer({ firstDay: '2026-09-20', lastDay: '2026-10-01' }))
    const viewer = await viewerOf(at, 'coach')
    const load = (now: string) =>
      loadPlayerBook(viewer, { squadId: at.club.squadId, playerId, query: {}, now: new Date(now) })
    const { settings } = await load('2026-10-01T12:00:00Z')
    expect(settings?.away).toEqual([
      { id: expect.any(String), playerId, firstDay: '2026-09-20', lastDay: '2026-10-01' },
    ])
  })

  it('are refused twice, in the past, the wrong way round, and of nobody', async () => {
    const days = { firstDay: '2026-10-06', lastDay: '2026-10-20' }
    await addAway(idle, ofPlayer(days))
    const answers = [
      [await addAway(idle, ofPlayer({ firstDay: '2026-10-07', lastDay: '' })), /in the list already/],
      [await addAway(idle, ofPlayer({ firstDay: '2026-09-01', lastDay: '2026-09-30' })), /is over/],
      [await addAway(idle, ofPlayer({ ...days, lastDay: '2026-10-01' })), /before the first day/],
      [await addAway(idle, form({ ...days, playerId: at.club.squadId })), /no longer there/],
      [await addClosedDays(idle, form({ ...fair, name: '' })), /write the name of these days/],
      [await setGround(idle, form({ place: 'X', lengthM: '4', widthM: '40' })), /metres from 5 to 200/],
      [await setGround(idle, form({ place: ' ', lengthM: '40', widthM: '40' })), /as practices have it/],
      [await removeGround(idle, form({ place: 'Nowhere' })), /not in the list any more/],
    ] as const
    for (const [answer, text] of answers) expect(answer).toMatchObject(refused(text))
    expect(await away()).toHaveLength(1)
  })

  it('a ground’s size is said anew, with a comma or a point', async () => {
    await setGround(idle, form({ place: 'Long Meadow', lengthM: '60', widthM: '40' }))
    await setGround(idle, form({ place: 'Long Meadow', lengthM: '55,5', widthM: '30' }))
    const expected = [{ place: 'Long Meadow', lengthM: 55.5, widthM: 30 }]
    expect(await inClub(at.club.club.id, listGroundSizes)).toEqual(expected)
    expect((await show()).grounds).toEqual(expected)
  })
})
