import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { listRegister, recordRegister } from '#data/register-lines'
import { lockSession, lockSessions } from '#data/sessions'
import { listEvents, recordEvents, recordTurns, voidTurnEvent } from '#data/turn-events'
import type { Turn } from '#practice/turn'
import { aClub, enterSession } from '../support/test-club'

const turn = (start: number): Turn => ({ start, end: start + 10, themeId: null, stations: [] })

describe('two who write one session', () => {
  it('take turns: nothing is lost and nothing has the same place in the order', async () => {
    const club = await aClub()
    const sessionId = await enterSession(club)
    const starts = Array.from({ length: 12 }, (_, index) => index * 10)
    await Promise.all(
      starts.map((start) =>
        club.run((tx) => recordTurns(tx, { sessionId, turns: [turn(start)], by: club.coach })),
      ),
    )
    const events = await club.run((tx) => listEvents(tx, sessionId))
    expect(new Set(events.map((event) => event.kind === 'turn' && event.turn.start))).toEqual(new Set(starts))
  })

  it('wait for the one who came first until it has ended', async () => {
    const club = await aClub()
    const sessionId = await enterSession(club)
    const order: string[] = []
    let isHeld = () => {}
    const held = new Promise<void>((resolve) => {
      isHeld = resolve
    })
    const first = club.run(async (tx) => {
      await lockSession(tx, sessionId)
      isHeld()
      await new Promise((resolve) => setTimeout(resolve, 150))
      order.push('first')
    })
    await held
    const second = club.run(async (tx) => {
      await lockSession(tx, sessionId)
      order.push('second')
    })
    await Promise.all([first, second])
    expect(order).toEqual(['first', 'second'])
  })

  it('are told of a conflict when both send the same event', async () => {
    const club = await aClub()
    const sessionId = await enterSession(club)
    const events = [{ kind: 'turn' as const, id: newId(), turn: turn(0) }]
    const send = () =>
      club.run((tx) => recordEvents(tx, { practices: [{ sessionId, events }], by: club.coach }))
    const [first, second] = await Promise.allSettled([send(), send()])
    const failed = [first, second].filter((one) => one?.status === 'rejected')
    expect(failed).toMatchObject([{ reason: { name: 'AppError', code: 'conflict' } }])
    expect(await club.run((tx) => listEvents(tx, sessionId))).toHaveLength(1)
  })

  it('void an event once: the second is told that it is voided', async () => {
    const club = await aClub()
    const sessionId = await enterSession(club)
    const [eventId] = (await club.run((tx) =>
      recordTurns(tx, { sessionId, turns: [turn(0)], by: club.coach }),
    )) as [string]
    const voiding = () => club.run((tx) => voidTurnEvent(tx, { sessionId, eventId, by: club.coach }))
    const answers = await Promise.all([voiding(), voiding()])
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1)
    expect(answers).toContainEqual({ ok: false, reasons: [{ eventId, reason: 'isVoided' }] })
  })

  it('of one register leave one of both', async () => {
    const club = await aClub()
    const sessionId = await enterSession(club)
    const playerId = club.playerIds[0] as string
    const write = (to: number) =>
      club.run((tx) =>
        recordRegister(tx, { sessionId, lines: [{ playerId, state: 'here', from: 0, to }], by: club.coach }),
      )
    await Promise.all([10, 20, 30, 40].map(write))
    const lines = await club.run((tx) => listRegister(tx, sessionId))
    expect(lines).toHaveLength(1)
    expect([10, 20, 30, 40]).toContain(lines[0]?.to)
  })

  it('of several sessions never wait in a ring', async () => {
    const club = await aClub()
    const ids = [await enterSession(club), await enterSession(club), await enterSession(club)]
    const lock = (wanted: string[]) => club.run((tx) => lockSessions(tx, wanted))
    await expect(
      Promise.all(Array.from({ length: 20 }, (_, index) => lock(index % 2 ? ids : ids.toReversed()))),
    ).resolves.toHaveLength(20)
  })
})

describe('a session that is not there', () => {
  it('cannot be written', async () => {
    const club = await aClub()
    const other = await aClub()
    const elsewhere = await enterSession(other)
    for (const sessionId of [newId(), elsewhere, 'no id']) {
      await expect(
        club.run((tx) => recordTurns(tx, { sessionId, turns: [turn(0)], by: club.coach })),
      ).rejects.toMatchObject({ code: 'notFound' })
    }
  })
})
