import { describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { newId } from '#data/ids'
import { listPitchEvents } from '#data/pitch-events'
import { recordPair } from '#data/player-pairs'
import { findPlayer } from '#data/players'
import { cancelSession } from '#data/sessions'
import { pitchLimits } from '#exchange/pitch-batch'
import { answerBatch } from '#server/pitch-door'
import { askAs as askDatabaseAs } from '../support/ask-as'
import { askAsPerson } from '../support/next-request'
import {
  aPlan,
  batchRequest,
  fetchPack,
  kickOff,
  otherPhone,
  phone,
  planIt,
  read,
  send,
  tapped,
  wholePractice,
} from '../support/pitch-club'
import { seededRandom } from '../support/seeded-random'
import { aClub, enterSession } from '../support/test-club'
import { testDatabase } from '../support/test-database'
import { aClubForWriting, askAs } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))

const at = aClubForWriting()
const askTheDatabase = (statement: string) =>
  askDatabaseAs(testDatabase().ownerUrl, (client) => client.query(statement))
const eventsNow = () => at.club.run((tx) => listPitchEvents(tx, { sessionId: at.sessionId }))

describe('the pack of a practice', () => {
  it('holds plan, players, policy and all that was tapped', async () => {
    const plan = await planIt(at.club, at.sessionId)
    const events = wholePractice(at.club, plan)
    await send(at.sessionId, { events })
    const { status, body } = await fetchPack(at.sessionId)
    expect(status).toBe(200)
    expect(body).toMatchObject({
      session: { id: at.sessionId, squadName: 'Otters', day: '2026-09-08', written: 'notWritten' },
      plan,
      planVersion: 1,
      themeName: 'Two against one',
      policy: { restLimitTurns: 2 },
      register: [],
      viewer: { kind: 'coach', name: 'Kit Vale', mayReplan: true },
      events,
      cursor: events.length,
    })
    expect(body.players.map(({ name, keeps }) => [name, keeps])).toEqual([
      ['Ada Fenn', true],
      ['Bo Larch', true],
      ['Cy Marrow', true],
      ['Di Quill', true],
      ['Eli Rook', false],
    ])
    expect(Math.abs(body.serverNow - Date.now())).toBeLessThan(60_000)
  })

  it('keeps apart also those who were noted after the plan was made, for the days they were noted for', async () => {
    const [a, b, c, , e] = at.club.playerIds as [string, string, string, string, string]
    const plan = await planIt(at.club, at.sessionId, aPlan(at.club, { mayMeet: [[b, c]] }))
    const { squadId, coach } = at.club
    const day = { firstDay: '2026-09-08', lastDay: '2026-09-08' }
    await at.club.run(async (tx) => {
      const note = (playerIds: [string, string], change = {}) =>
        recordPair(tx, {
          ...{ id: newId(), squadId, playerIds, kind: 'apart', ...day },
          ...change,
          madeById: coach.personId,
        } as Parameters<typeof recordPair>[1])
      await note([b, a])
      await note([c, e])
      await note([a, e], { firstDay: '2026-09-09', lastDay: null })
      await note([b, e], { kind: 'together' })
      await note([c, b])
    })
    const { body } = await fetchPack(at.sessionId)
    expect(plan).toMatchObject({ apart: [[a, b]], mayMeet: [[b, c]] })
    expect(body.plan).toEqual({ ...plan, apart: [...plan.apart, [c, e]] })
  })

  it('is there without a plan too', async () => {
    expect((await fetchPack(at.sessionId)).body).toMatchObject({
      plan: null,
      planVersion: 0,
      events: [],
      cursor: 0,
    })
  })

  it.each(['otherCoach', 'guardian'] as const)('is not for %s, and neither is tapping', async (who) => {
    askAs(at.club, who)
    expect(await fetchPack(at.sessionId)).toMatchObject({ status: 404, body: { why: expect.any(String) } })
    expect(await send(at.sessionId, { events: [tapped(0, { kind: 'begin' })] })).toMatchObject({
      status: 404,
    })
    expect((await eventsNow()).events).toEqual([])
  })

  it('is for the head coach', async () => {
    askAs(at.club, 'headCoach')
    expect((await fetchPack(at.sessionId)).body.viewer).toEqual({
      kind: 'coach',
      name: 'Lou Wynd',
      mayReplan: true,
    })
  })

  it('is for nobody who is signed out, nor for another club', async () => {
    askAsPerson(null)
    expect(await fetchPack(at.sessionId)).toMatchObject({
      status: 401,
      body: { why: expect.stringMatching(/signed out/) },
    })
    const stranger = await aClub({ isDemo: true })
    askAs(stranger, 'headCoach')
    expect(await fetchPack(at.sessionId)).toMatchObject({ status: 404 })
    expect(await send(at.sessionId, { events: [tapped(0, { kind: 'begin' })] })).toMatchObject({
      status: 404,
    })
  })

  it.each(['no-id', newId()])('is not found under %s', async (id) => {
    expect(await fetchPack(id)).toMatchObject({ status: 404 })
  })

  it('is refused in a sentence for a practice that was cancelled', async () => {
    await at.club.run((tx) => cancelSession(tx, { sessionId: at.sessionId, by: at.club.coach }))
    for (const answer of [await fetchPack(at.sessionId), await send(at.sessionId, {})])
      expect(answer).toMatchObject({ status: 409, body: { why: expect.stringMatching(/cancelled/) } })
  })
})

describe('a batch', () => {
  it('is kept, once, with its hand, its time and an audit row that names nobody', async () => {
    const events = [tapped(0, { kind: 'begin' }), tapped(60, { kind: 'stop' })]
    const first = await send(at.sessionId, { events })
    expect(first.body).toMatchObject({
      stored: events.map(({ id }) => id),
      refused: [],
      events: [],
      cursor: 2,
    })
    const again = await send(at.sessionId, { events, cursor: 2 })
    expect(again.body).toMatchObject({ stored: events.map(({ id }) => id), refused: [], cursor: 2 })
    expect((await eventsNow()).events).toEqual(events)
    expect(await at.club.run((tx) => listAudit(tx, { limit: 9 }))).toMatchObject([
      { action: 'tapAtPitch', objectId: at.sessionId, detail: { events: 2 }, personName: 'Kit Vale' },
    ])
  })

  it('tells what other phones tapped since, and not what this one did', async () => {
    const [mine, theirs, later] = [
      tapped(0, { kind: 'begin' }),
      tapped(1, { kind: 'stop' }, { deviceId: otherPhone }),
      tapped(2, { kind: 'begin' }, { deviceId: otherPhone }),
    ]
    await send(at.sessionId, { events: [mine] })
    const theirAnswer = await send(at.sessionId, { deviceId: otherPhone, events: [theirs] })
    expect(theirAnswer.body).toMatchObject({ events: [mine], cursor: 2 })
    await send(at.sessionId, { deviceId: otherPhone, cursor: 2, events: [later] })
    expect((await send(at.sessionId, { cursor: 1 })).body).toMatchObject({
      events: [theirs, later],
      cursor: 3,
    })
    // A book restored from an older copy knows less than the phone: it is told everything anew.
    expect((await send(at.sessionId, { cursor: 99 })).body).toMatchObject({
      events: [theirs, later],
      cursor: 3,
    })
  })

  it('refuses one bad event in a sentence, and takes the others', async () => {
    const good = tapped(0, { kind: 'begin' })
    const bad = { ...tapped(1, { kind: 'stop' }), deed: { kind: 'dance' } }
    const oldId = tapped(2, { kind: 'stop' }, { id: 'c56a4180-65aa-42ec-a945-5fd21dec0538' })
    const nobody = { at: 1 }
    const broken = tapped(3, { kind: 'replan', fromTurn: 0, turns: [], sentence: 'As\u0000fair' })
    const half = tapped(4, { kind: 'replan', fromTurn: 0, turns: [], sentence: '\ud800' })
    const { body } = await send(at.sessionId, { events: [bad, good, oldId, nobody, broken, half] })
    expect(body.stored).toEqual([good.id])
    expect(body.refused.map(({ id }) => id)).toEqual([bad.id, oldId.id, '', broken.id, half.id])
    for (const { why } of body.refused) expect(why).toMatch(/^(The book cannot read|A text in this)/)
    expect((await eventsNow()).events).toEqual([good])
  })

  it('refuses another content under an id that is taken, here and in another practice', async () => {
    const event = tapped(0, { kind: 'begin' })
    await send(at.sessionId, { events: [event] })
    const clash = await send(at.sessionId, { events: [{ ...event, at: event.at + 1 }] })
    expect(clash.body).toMatchObject({
      stored: [],
      refused: [{ id: event.id, why: expect.stringMatching(/same number/) }],
    })
    const inOne = tapped(5, { kind: 'stop' })
    const both = await send(at.sessionId, { events: [inOne, { ...inOne, deed: { kind: 'begin' } }] })
    expect(both.body.refused).toMatchObject([{ id: inOne.id }])
    const other = await enterSession(at.club, { title: 'Another' })
    expect((await send(other, { events: [event] })).body).toMatchObject({
      stored: [],
      refused: [{ id: event.id }],
    })
    expect((await eventsNow()).events[0]).toEqual(event)
  })

  it('is taken in any order of arrival, whole or in parts, sent again or not: the same events are there', async () => {
    const plan = await planIt(at.club, at.sessionId)
    const mine = wholePractice(at.club, plan)
    const theirs = mine.map(({ at: when, deed }, index) =>
      tapped((when - kickOff) / 1000 + index, deed, { deviceId: otherPhone }),
    )
    const byId = (events: readonly { readonly id: string }[]) => events.map(({ id }) => id).sort()
    for (let round = 0; round < 15; round += 1) {
      const random = seededRandom(round + 1)
      const sessionId = await enterSession(at.club, { title: `Practice ${round}` })
      const fresh = (own: typeof mine) =>
        own.map((event) => ({ ...event, id: tapped((event.at - kickOff) / 1000, event.deed).id }))
      const own = fresh(mine)
      const others = fresh(theirs)
      const waiting = random.shuffle([...own, ...others, ...own, ...others])
      while (waiting.length > 0) {
        const events = waiting.splice(0, random.whole(1, 6))
        const { status, body } = await send(sessionId, {
          deviceId: random.chance(0.5) ? phone : otherPhone,
          events,
        })
        expect(status).toBe(200)
        expect(body.refused).toEqual([])
      }
      const kept = await at.club.run((tx) => listPitchEvents(tx, { sessionId }))
      expect(byId(kept.events)).toEqual(byId([...own, ...others]))
      expect(kept.cursor).toBe(own.length + others.length)
    }
  }, 60_000)

  it('of two phones at the same moment is taken from both, each place in the order given once', async () => {
    const batches = Array.from({ length: 8 }, (_, index) => [
      tapped(index, { kind: 'begin' }, { deviceId: index % 2 ? phone : otherPhone }),
      tapped(index + 1, { kind: 'stop' }, { deviceId: index % 2 ? phone : otherPhone }),
    ])
    const answers = await Promise.all(batches.map((events) => send(at.sessionId, { events })))
    expect(answers.map(({ status }) => status)).toEqual(batches.map(() => 200))
    const { events, cursor } = await eventsNow()
    expect([events.length, cursor]).toEqual([16, 16])
  })

  it('that breaks off half-way leaves nothing behind, and is taken when it is sent again', async () => {
    const events = [
      tapped(0, { kind: 'guest', playerId: newId(), name: 'Zoe Pike' }),
      tapped(1, { kind: 'begin' }),
    ]
    // The last statement of the transaction fails, as if the server had been cut off before its end.
    await askTheDatabase(
      `create function break_off() returns trigger language plpgsql as $$ begin raise exception 'broken off'; end $$;
       create trigger break_off before insert on "AuditEntry" for each row when (new.action = 'tapAtPitch')
         execute function break_off()`,
    )
    const log = vi.spyOn(process.stderr, 'write').mockReturnValue(true)
    try {
      expect(await send(at.sessionId, { events })).toMatchObject({
        status: 500,
        body: { why: expect.stringMatching(/still on the phone/) },
      })
      expect((await eventsNow()).events).toEqual([])
      expect(log).toHaveBeenCalled()
    } finally {
      log.mockRestore()
      await askTheDatabase('drop trigger break_off on "AuditEntry"; drop function break_off')
    }
    expect((await send(at.sessionId, { events })).body.stored).toEqual(events.map(({ id }) => id))
    expect((await eventsNow()).events).toEqual(events)
  })

  it('has a limit of new faces', async () => {
    const guests = Array.from({ length: pitchLimits.guests + 1 }, (_, index) =>
      tapped(index, { kind: 'guest', playerId: newId(), name: `New ${index}` }),
    )
    const { body } = await send(at.sessionId, { events: guests })
    expect(body.stored).toHaveLength(pitchLimits.guests)
    expect(body.refused).toMatchObject([{ id: guests.at(-1)?.id, why: expect.stringMatching(/new faces/) }])
  })
})

describe('a guest’s name', () => {
  it('is kept with the guest alone, not with what was tapped', async () => {
    const guest = tapped(0, { kind: 'guest', playerId: newId(), name: '  Zoe   Pike ' })
    await send(at.sessionId, { events: [guest] })
    const [row] = await at.club.run((tx) => tx.db.pitchEvent.findMany({ select: { deed: true } }))
    expect(JSON.stringify(row)).not.toContain('Zoe')
    const { events } = await eventsNow()
    expect(events[0]?.deed).toMatchObject({ name: 'Zoe Pike' })
    // Sent again, and sent again after the name has gone, it is the same event.
    expect((await send(at.sessionId, { events: [guest] })).body.stored).toEqual([guest.id])
  })

  it('is not laid over a player of the club', async () => {
    const [playerId] = at.club.playerIds as [string]
    const guest = tapped(0, { kind: 'guest', playerId, name: 'Somebody Else' })
    expect((await send(at.sessionId, { events: [guest] })).body).toMatchObject({
      stored: [],
      refused: [{ why: expect.stringMatching(/player of the club already/) }],
    })
    expect((await at.club.run((tx) => findPlayer(tx, playerId)))?.name).toBe('Ada Fenn')
  })
})

describe('a request as a whole', () => {
  const event = tapped(0, { kind: 'begin' })
  const ask = async (
    batch: Parameters<typeof batchRequest>[0],
    headers: Readonly<Record<string, string>> = {},
  ) => read(await answerBatch(batchRequest(batch, headers), at.sessionId))

  it.each<[what: string, headers: Record<string, string>]>([
    ['another origin', { origin: 'https://elsewhere.example.org' }],
    ['no origin that could be known', { origin: 'null' }],
    ['another site', { 'sec-fetch-site': 'cross-site' }],
    ['the same site under another name', { 'sec-fetch-site': 'same-site' }],
  ])('from %s is refused, and nothing is kept', async (_what, headers) => {
    expect(await ask({ events: [event] }, headers)).toMatchObject({
      status: 403,
      body: { why: expect.any(String) },
    })
    expect((await eventsNow()).events).toEqual([])
  })

  it('that is no JSON, no batch, or far too long is refused in a sentence', async () => {
    expect(await ask('{"deviceId":')).toMatchObject({
      status: 400,
      body: { why: expect.stringMatching(/is not JSON/) },
    })
    expect(await ask({ deviceId: 'mine' })).toMatchObject({
      status: 400,
      body: { why: expect.stringMatching(/deviceId/) },
    })
    expect(await ask({ events: Array.from({ length: pitchLimits.events + 1 }, () => event) })).toMatchObject({
      status: 400,
    })
    expect(await ask('x'.repeat(pitchLimits.batchLetters + 1))).toMatchObject({ status: 413 })
    expect(await ask({ events: [event] }, { 'content-type': 'text/plain' })).toMatchObject({ status: 415 })
  })
})
