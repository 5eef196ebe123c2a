import { beforeEach, describe, expect, it, vi } from 'vitest'
import { listHelperPasses } from '#data/helper-passes'
import { newId } from '#data/ids'
import { listPitchEvents } from '#data/pitch-events'
import { cancelSession, lockSession } from '#data/sessions'
import { pitchLimits } from '#exchange/pitch-batch'
import type { PlannedTurn } from '#planning/practice-plan'
import { makeHelperPass, takeBackHelperPass } from '#server/helper-actions'
import { signedPass } from '#server/helper-secret'
import { answerBatch } from '#server/pitch-door'
import { formOfFields as form } from '../support/form-of-fields'
import { askAsPerson, askWithCookie } from '../support/next-request'
import { batchRequest, fetchPack, otherPhone, phone, planIt, read, send, tapped } from '../support/pitch-club'
import { enterSession } from '../support/test-club'
import { aClubForWriting, askAs, idle } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
beforeEach(async () => {
  at.sessionId = await enterSession(at.club, { day: '2026-10-01' })
})
const place = () => ({ squadId: at.club.squadId, sessionId: at.sessionId })
const eventsNow = async (sessionId = at.sessionId) =>
  (await at.club.run((tx) => listPitchEvents(tx, { sessionId }))).events

/** From now on a helper asks, with a pass of its own. */
async function askAsHelper() {
  askAs(at.club, 'coach')
  await makeHelperPass(idle, form(place()))
  const [pass] = await at.club.run((tx) => listHelperPasses(tx, at.sessionId))
  const passId = pass?.id ?? ''
  askAsPerson(null)
  askWithCookie('turnbook-helper', signedPass({ clubId: at.club.club.id, passId }))
  return passId
}

describe('a helper', () => {
  const replan = tapped(1, { kind: 'replan', fromTurn: 0, turns: [], sentence: '' })

  it('cannot take a new plan back, nor bring one back, at the end of any chain of undos', async () => {
    const undone = tapped(2, { kind: 'undo', undoes: replan.id })
    await send(at.sessionId, { events: [tapped(0, { kind: 'begin' }), replan, undone] })
    await askAsHelper()
    const [begin] = await eventsNow()
    const direct = tapped(3, { kind: 'undo', undoes: replan.id })
    const again = tapped(4, { kind: 'undo', undoes: undone.id })
    const deeper = tapped(5, { kind: 'undo', undoes: again.id })
    const own = tapped(6, { kind: 'undo', undoes: begin?.id ?? '' })
    const ring = [newId(), newId()] as const
    const round = [
      tapped(7, { kind: 'undo', undoes: ring[1] }, { id: ring[0] }),
      tapped(8, { kind: 'undo', undoes: ring[0] }, { id: ring[1] }),
    ]
    const { body } = await send(at.sessionId, {
      deviceId: otherPhone,
      events: [direct, again, deeper, own, ...round],
    })
    expect(body.refused.map(({ id }) => id)).toEqual([direct.id, again.id, deeper.id])
    for (const { why } of body.refused) expect(why).toMatch(/Only a coach/)
    expect(body.stored).toEqual([own.id, ...ring])
  })

  it('cannot take back that somebody is out for today, unless it was the helper’s own tap', async () => {
    const [a = '', b = ''] = at.club.playerIds
    const out = tapped(1, { kind: 'register', playerId: a, state: 'out' })
    await send(at.sessionId, { events: [tapped(0, { kind: 'begin' }), out] })
    await askAsHelper()
    const back = tapped(2, { kind: 'undo', undoes: out.id, secondAnswer: true })
    const deeper = tapped(3, { kind: 'undo', undoes: back.id })
    const slip = tapped(4, { kind: 'register', playerId: b, state: 'out' })
    const mended = tapped(5, { kind: 'undo', undoes: slip.id, secondAnswer: true })
    const first = await send(at.sessionId, { deviceId: otherPhone, events: [back, deeper, slip] })
    expect(first.body).toMatchObject({
      stored: [slip.id],
      refused: [
        { id: back.id, why: expect.stringMatching(/stays out/) },
        { id: deeper.id, why: expect.stringMatching(/stays out/) },
      ],
    })
    expect((await send(at.sessionId, { deviceId: otherPhone, events: [mended] })).body.stored).toEqual([
      mended.id,
    ])
    const here = tapped(6, { kind: 'register', playerId: a, state: 'here', secondAnswer: true })
    const again = await send(at.sessionId, { deviceId: otherPhone, events: [here] })
    expect(again.body.refused).toEqual([{ id: here.id, why: expect.stringMatching(/stays out/) }])
    askAs(at.club, 'coach')
    expect((await send(at.sessionId, { events: [back, here] })).body.stored).toEqual([back.id, here.id])
  })

  it('that taps in the name of the coach’s phone is seen on that phone', async () => {
    await send(at.sessionId, { events: [tapped(0, { kind: 'begin' })] })
    await askAsHelper()
    const forged = tapped(1, { kind: 'stop' }, { deviceId: phone })
    await send(at.sessionId, { events: [forged] })
    askAs(at.club, 'coach')
    const mine = tapped(2, { kind: 'begin' })
    const { body } = await send(at.sessionId, { cursor: 1, events: [mine] })
    expect(body).toMatchObject({ events: [forged], cursor: 3 })
  })

  it('leaves the coach’s phone room: half of the taps, of their length and of the new faces', async () => {
    const [a = ''] = at.club.playerIds
    const wide: PlannedTurn = {
      round: 0,
      seconds: 60,
      gapSeconds: 0,
      stations: Array.from({ length: 5 }, () => ({ attack: Array(10).fill(a), defend: [], keep: [] })),
    }
    const large = (second: number) =>
      tapped(second, { kind: 'roundDone', round: 0, turns: Array(90).fill(wide) })
    const face = (second: number) => tapped(second, { kind: 'guest', playerId: newId(), name: 'New Face' })
    await askAsHelper()
    const faces = Array.from({ length: 21 }, (_, index) => face(index))
    const told = await send(at.sessionId, { events: faces })
    expect(told.body.refused).toMatchObject([{ id: faces[20]?.id, why: expect.stringMatching(/helpers/) }])
    const refused = []
    for (let part = 0; part < 3; part += 1) {
      const { status, body } = await send(at.sessionId, {
        events: Array.from({ length: 9 }, (_, index) => large(100 + 10 * part + index)),
      })
      expect(status).toBe(200)
      refused.push(...body.refused)
    }
    expect(refused.length).toBeGreaterThan(0)
    for (const { why } of refused)
      expect(why).toBe('At most 4 megabytes of taps from helpers are kept of one practice.')
    // Another code is another pass, and not another half.
    await askAsHelper()
    expect((await send(at.sessionId, { events: [large(200)] })).body.stored).toEqual([])
    askAs(at.club, 'coach')
    const own = [large(300), face(301)]
    expect((await send(at.sessionId, { events: own })).body.stored).toEqual(own.map(({ id }) => id))
  })

  it('taps half of what is kept of one practice, and the coach the rest', async () => {
    const points = (from: number) =>
      Array.from({ length: pitchLimits.events }, (_, index) =>
        tapped(from + index, { kind: 'points', round: 0, side: 0, points: 1 }),
      )
    await askAsHelper()
    for (let from = 0; from < 2500; from += 500)
      expect((await send(at.sessionId, { events: points(from) })).body.refused).toEqual([])
    const { body } = await send(at.sessionId, { events: points(2500) })
    expect(body.refused).toHaveLength(500)
    askAs(at.club, 'coach')
    for (let from = 3000; from < 5500; from += 500)
      expect((await send(at.sessionId, { events: points(from) })).body.refused).toEqual([])
    const [more] = (await send(at.sessionId, { events: [tapped(9000, { kind: 'stop' })] })).body.refused
    expect(more?.why).toBe('At most 5000 taps are kept of one practice.')
  }, 60_000)

  it('whose pass is taken back while the batch waits is shut out with it', async () => {
    const passId = await askAsHelper()
    const waiting = await whileLocked(
      () => send(at.sessionId, { events: [tapped(0, { kind: 'begin' })] }),
      'takeBack',
    )
    expect(waiting).toMatchObject({ status: 404 })
    expect(await eventsNow()).toEqual([])
    askAs(at.club, 'coach')
    expect(await takeBackHelperPass(idle, form({ ...place(), passId }))).toMatchObject({ status: 'refused' })
  })
})

/** Somebody else is at the practice first, and a batch that was sent meanwhile waits until that is done. */
async function whileLocked<Answer>(work: () => Promise<Answer>, deed: 'cancel' | 'takeBack') {
  let answer: Promise<Answer> | null = null
  await at.club.run(async (tx) => {
    await lockSession(tx, at.sessionId)
    answer = work()
    await new Promise((resolve) => setTimeout(resolve, 300))
    if (deed === 'cancel') await cancelSession(tx, { sessionId: at.sessionId, by: at.club.coach })
    else await tx.db.helperPass.updateMany({ data: { revokedAt: new Date() } })
  })
  return answer as Answer | null
}

describe('a batch', () => {
  it('that waits while the practice is cancelled is refused with it', async () => {
    const answer = await whileLocked(
      () => send(at.sessionId, { events: [tapped(0, { kind: 'begin' })] }),
      'cancel',
    )
    expect(answer).toMatchObject({ status: 409, body: { why: expect.stringMatching(/cancelled/) } })
    expect(await eventsNow()).toEqual([])
  })

  it('cannot make a guest of another practice its own new face, nor learn its name', async () => {
    const guestId = newId()
    const guest = tapped(0, { kind: 'guest', playerId: guestId, name: 'Zoe Pike' })
    await send(at.sessionId, { events: [guest] })
    const other = await enterSession(at.club, { title: 'Another' })
    const taken = tapped(1, { kind: 'guest', playerId: guestId, name: 'Nobody' })
    expect((await send(other, { events: [taken] })).body).toMatchObject({
      stored: [],
      refused: [{ id: taken.id, why: expect.stringMatching(/no new face/) }],
    })
    expect(JSON.stringify((await fetchPack(other)).body)).not.toContain('Zoe')
    // Tapped twice in its own practice, by two phones, it is one guest.
    const twice = tapped(2, { kind: 'guest', playerId: guestId, name: 'Zoe' }, { deviceId: otherPhone })
    expect((await send(at.sessionId, { deviceId: otherPhone, events: [twice] })).body.stored).toEqual([
      twice.id,
    ])
  })

  it.each([
    '"__proto__":{"kind":"stop"}',
    '"constructor":{"prototype":{}}',
    '"toString":1',
    '"kind":"__proto__"',
    '"kind":"toString"',
  ])('with %s in a deed is refused, and nothing else is changed by it', async (key) => {
    const event = tapped(0, { kind: 'begin' })
    const text = JSON.stringify({ deviceId: phone, cursor: 0, events: [event] })
    const spoiled = text.replace('"kind":"begin"', `"kind":"begin",${key}`)
    const { status, body } = await read<{ refused: unknown[]; stored: unknown[] }>(
      await answerBatch(batchRequest(spoiled), at.sessionId),
    )
    expect([status, body.stored, body.refused.length]).toEqual([200, [], 1])
    expect(({} as Record<string, unknown>).kind).toBeUndefined()
    expect((await send(at.sessionId, { events: [event] })).body.stored).toEqual([event.id])
  })

  it.each<[what: string, deed: object]>([
    ['a turn a thousand million', { kind: 'turnStart', turn: 1e9, stations: [] }],
    ['a turn before the first', { kind: 'turnStart', turn: -1, stations: [] }],
    ['half a turn', { kind: 'turnStart', turn: 0.5, stations: [] }],
    ['no number', { kind: 'turnStart', turn: Number.NaN, stations: [] }],
    ['a round a thousand million', { kind: 'roundDone', round: 1e9, turns: [] }],
    ['points without end', { kind: 'points', round: 0, side: 0, points: 1e300 }],
    ['an area before the first', { kind: 'turnEnd', start: newId(), endings: [{ station: -1 }] }],
  ])('with %s is refused in a sentence', async (_what, deed) => {
    const event = { ...tapped(0, { kind: 'begin' }), deed }
    const { body } = await send(at.sessionId, { events: [event] })
    expect(body.refused).toMatchObject([{ id: event.id, why: expect.stringMatching(/cannot read this/) }])
  })

  it.each([1e300, -1, 1.5, Date.UTC(2100, 0, 1)])('from %s milliseconds is refused', async (when) => {
    const event = { ...tapped(0, { kind: 'begin' }), at: when }
    expect((await send(at.sessionId, { events: [event] })).body.refused).toHaveLength(1)
  })

  it('takes names of any script without what turns text around, and shows markup as text', async () => {
    const names = ['<script>alert(1)</script>', '\u202eevil', 'Zoë\nPike', '\u2066Ana\u2069', '👩‍👩‍👧']
    await send(at.sessionId, {
      events: names.map((name, index) => tapped(index, { kind: 'guest', playerId: newId(), name })),
    })
    const kept = (await eventsNow()).map(({ deed }) => (deed.kind === 'guest' ? deed.name : ''))
    expect(kept).toEqual(['<script>alert(1)</script>', 'evil', 'Zoë Pike', 'Ana', '👩‍👩‍👧'])
    const bad = ['', '   ', '\u200b\u200b', 'x'.repeat(81), 'x'.repeat(5000)]
    const { body } = await send(at.sessionId, {
      events: bad.map((name, index) => tapped(index, { kind: 'guest', playerId: newId(), name })),
    })
    expect(body.refused).toHaveLength(bad.length)
  })

  it('of players of another squad, or of nobody, is kept and seats nobody', async () => {
    const plan = await planIt(at.club, at.sessionId)
    const stranger = newId()
    const turns = plan.turns.map((turn) => ({
      ...turn,
      stations: [{ attack: [stranger], defend: [], keep: [] }],
    }))
    await send(at.sessionId, {
      events: [
        tapped(0, { kind: 'begin' }),
        tapped(1, { kind: 'register', playerId: stranger, state: 'here' }),
        tapped(300, { kind: 'roundDone', round: 0, turns: turns.slice(0, 2) }),
      ],
    })
    const { body } = await fetchPack(at.sessionId)
    expect(body.players.map(({ id }) => id)).not.toContain(stranger)
  })
})
