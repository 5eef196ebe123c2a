import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { listSpells, recordSpells, voidSpells } from '#data/match-spells'
import { markWritten } from '#data/sessions'
import {
  listEvents,
  recordEvents,
  recordPassed,
  recordTurns,
  voidTurnEvent,
  voidTurnEvents,
} from '#data/turn-events'
import { countChoices, findMedianTurnSeconds, listPassed } from '#data/turn-sums'
import { loadMatch, loadPractice } from '#data/written-sessions'
import type { Spell } from '#match/match'
import type { PracticeEvent } from '#practice/event'
import type { Turn } from '#practice/turn'
import { aClub, enterSession, type TestClub } from '../support/test-club'

const season = (club: TestClub) => ({ squadId: club.squadId, from: '2026-08-01', to: '2027-06-30' })

function aTurn(turn: Partial<Turn> = {}): Turn {
  return {
    start: 0,
    end: 45,
    themeId: null,
    stations: [],
    round: null,
    continuesWait: false,
    continuesTurn: false,
    chosenBy: null,
    ...turn,
  }
}

describe('the events of a practice', () => {
  it('are read as they were written, places in their order', async () => {
    const club = await aClub({ players: 8 })
    const [a, b, c, d, e, f, g, h] = club.playerIds as [
      string,
      string,
      string,
      string,
      string,
      string,
      string,
      string,
    ]
    const sessionId = await enterSession(club)
    const turn = newId()
    const events: PracticeEvent[] = [
      {
        kind: 'turn',
        id: turn,
        turn: aTurn({
          start: 60,
          end: 105,
          themeId: club.themeIds[1],
          round: 'Two against one',
          chosenBy: 'defend',
          stations: [
            { attack: [c, a], defend: [b], keep: [d] },
            { attack: [], defend: [], keep: [] },
            { attack: [], defend: [h, g, e], keep: [f] },
          ],
        }),
      },
      {
        kind: 'turn',
        id: newId(),
        turn: aTurn({ start: 105, end: 150, continuesWait: true, continuesTurn: true }),
      },
      { kind: 'passed', id: newId(), playerId: a, role: 'keep', lengthSeconds: 45 },
      { kind: 'void', id: newId(), voids: turn },
      { kind: 'turn', id: newId(), turn: aTurn({ start: 60, end: 100 }) },
    ]
    await club.run((tx) =>
      recordEvents(tx, { practices: [{ sessionId, events: events.slice(0, 2) }], by: club.coach }),
    )
    await club.run((tx) =>
      recordEvents(tx, { practices: [{ sessionId, events: events.slice(2) }], by: club.coach }),
    )
    expect(await club.run((tx) => listEvents(tx, sessionId))).toEqual(events)
    const { practice, passes } = await club.run((tx) => loadPractice(tx, sessionId))
    expect(practice.turns.map(({ start, end }) => [start, end])).toEqual([
      [60, 100],
      [105, 150],
    ])
    expect(passes).toEqual([{ playerId: a, role: 'keep', lengthSeconds: 45 }])
  })

  it('are voided all or none, with every reason why not', async () => {
    const club = await aClub()
    const sessionId = await enterSession(club)
    const other = await enterSession(club)
    const turns = [aTurn({ start: 0, end: 10 }), aTurn({ start: 10, end: 20 })]
    const [first, second] = (await club.run((tx) =>
      recordTurns(tx, { sessionId, turns, by: club.coach }),
    )) as [string, string]
    const [elsewhere] = (await club.run((tx) =>
      recordTurns(tx, { sessionId: other, turns, by: club.coach }),
    )) as [string]
    const voiding = (...eventIds: string[]) =>
      club.run((tx) => voidTurnEvents(tx, { sessionId, eventIds, by: club.coach }))
    expect(await club.run((tx) => voidTurnEvent(tx, { sessionId, eventId: first, by: club.coach }))).toEqual({
      ok: true,
      value: null,
    })
    const voidId = (await club.run((tx) => listEvents(tx, sessionId))).at(-1)?.id as string
    expect(await voiding(second, first, voidId, elsewhere, 'no id', second)).toEqual({
      ok: false,
      reasons: [
        { eventId: first, reason: 'isVoided' },
        { eventId: voidId, reason: 'isVoid' },
        { eventId: elsewhere, reason: 'unknown' },
        { eventId: 'no id', reason: 'unknown' },
        { eventId: second, reason: 'isVoided' },
      ],
    })
    const { practice } = await club.run((tx) => loadPractice(tx, sessionId))
    expect(practice.turns).toEqual([turns[1]])
  })

  it('tell of passes, of choices and of the usual length of a turn, voided ones left out', async () => {
    const club = await aClub()
    const [a, b, c] = club.playerIds as [string, string, string]
    const sessionId = await enterSession(club)
    const one = (attack: string[], defend: string[]) => [{ attack, defend, keep: [] }]
    const turns = [
      aTurn({ start: 0, end: 40, stations: one([a], [b]), chosenBy: 'attack' }),
      aTurn({ start: 40, end: 90, stations: one([a, c], [b]), chosenBy: 'defend' }),
      aTurn({ start: 90, end: 150, stations: one([c], [a]) }),
      aTurn({ start: 150, end: 650, stations: one([c], [a]), chosenBy: 'attack' }),
    ]
    const ids = await club.run((tx) => recordTurns(tx, { sessionId, turns, by: club.coach }))
    const passed = { playerId: b, role: 'attack', lengthSeconds: 40 } as const
    const passes = await club.run((tx) =>
      recordPassed(tx, { sessionId, passed: [passed, passed], by: club.coach }),
    )
    const eventIds = [ids[3] as string, passes[0] as string]
    await club.run((tx) => voidTurnEvents(tx, { sessionId, eventIds, by: club.coach }))
    // Nobody has said yet that the session was written down.
    expect(await club.run((tx) => findMedianTurnSeconds(tx, season(club)))).toBeNull()
    await club.run((tx) => markWritten(tx, { sessionIds: [sessionId], written: 'tapped', by: club.coach }))
    expect(await club.run((tx) => findMedianTurnSeconds(tx, season(club)))).toBe(50)
    expect(await club.run((tx) => listPassed(tx, season(club)))).toEqual([{ sessionId, ...passed }])
    expect(new Set(await club.run((tx) => countChoices(tx, season(club))))).toEqual(
      new Set([
        { playerId: a, chose: 1, choiceTurns: 2 },
        { playerId: b, chose: 1, choiceTurns: 2 },
        { playerId: c, chose: 0, choiceTurns: 1 },
      ]),
    )
  })

  it('are one turn where places changed during it, in its length and in who chose', async () => {
    const club = await aClub({ players: 3 })
    const [a, b, c] = club.playerIds as [string, string, string]
    const sessionId = await enterSession(club)
    const one = (attack: string[], defend: string[]) => [{ attack, defend, keep: [] }]
    const turns = [
      aTurn({ start: 0, end: 30, stations: one([a], [b]), chosenBy: 'attack' }),
      aTurn({ start: 30, end: 100, stations: one([c], [b]), chosenBy: 'attack', continuesTurn: true }),
      aTurn({ start: 110, end: 130, stations: one([a], [b]) }),
    ]
    await club.run((tx) => recordTurns(tx, { sessionId, turns, by: club.coach }))
    await club.run((tx) => markWritten(tx, { sessionIds: [sessionId], written: 'tapped', by: club.coach }))
    expect(await club.run((tx) => findMedianTurnSeconds(tx, season(club)))).toBe(60)
    expect(new Set(await club.run((tx) => countChoices(tx, season(club))))).toEqual(
      new Set([
        { playerId: a, chose: 1, choiceTurns: 1 },
        { playerId: b, chose: 0, choiceTurns: 1 },
        { playerId: c, chose: 1, choiceTurns: 1 },
      ]),
    )
  })
})

describe('the spells of a match', () => {
  it('are read as they were written, and voided of some players or of all', async () => {
    const club = await aClub()
    const [a, b] = [...club.playerIds].sort() as [string, string]
    const sessionId = await enterSession(club, { kind: 'match' })
    const spell = (playerId: string, line: Spell['line'], start: number, end: number) => ({
      playerId,
      line,
      start,
      end,
    })
    const spells = [
      spell(a, 'keeper', 0, 600),
      spell(b, 'middle', 0, 900),
      spell(a, 'forward', 600, 1200),
      spell(b, 'back', 900, 1200),
    ]
    await club.run((tx) =>
      recordSpells(tx, { matches: [{ sessionId, spells: spells.toReversed() }], by: club.coach }),
    )
    expect(await club.run((tx) => listSpells(tx, sessionId))).toEqual(spells)
    const voiding = (playerIds?: string[]) =>
      club.run((tx) => voidSpells(tx, { sessionId, by: club.coach, ...(playerIds && { playerIds }) }))
    expect(await voiding([a])).toBe(2)
    const { match } = await club.run((tx) => loadMatch(tx, sessionId))
    expect(match.spells).toEqual([spells[1], spells[3]])
    expect(await voiding()).toBe(2)
    expect(await club.run((tx) => listSpells(tx, sessionId))).toEqual([])
    await expect(club.run((tx) => loadPractice(tx, sessionId))).rejects.toMatchObject({ code: 'notFound' })
  })
})
