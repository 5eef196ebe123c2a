import type pg from 'pg'
import { afterAll, beforeAll } from 'vitest'
import { recordSpells } from '#data/match-spells'
import { recordRegister } from '#data/register-lines'
import { recordSquadCoach } from '#data/squad-coaches'
import { recordPassed, recordTurns, voidTurnEvent } from '#data/turn-events'
import { askAs, failureOf } from './ask-as'
import { aClub, enterSession, type TestClub } from './test-club'
import { testDatabase } from './test-database'

// Asked as the owner, whom no policy or right stops: what refuses here refuses everyone.

export type Ids = {
  readonly club: string
  readonly squad: string
  readonly season: string
  readonly term: string
  readonly coach: string
  readonly player: string
  /** A member who is in no turn and on no register. */
  readonly other: string
  readonly theme: string
  readonly childTheme: string
  readonly practice: string
  readonly otherPractice: string
  readonly match: string
  /** From second 0 to 45, with one station. */
  readonly turn: string
  readonly passed: string
  readonly voided: string
  readonly theVoid: string
}

export let ids: Ids
/** What a statement fails with, null when it does not; nothing of it stays. */
export let ask: (statement: string) => ReturnType<typeof failureOf>
let close: () => void = () => {}

beforeAll(async () => {
  ids = await fill(await aClub())
  await new Promise<void>((ready, failed) => {
    const work = (client: pg.Client) => {
      ask = (statement) => failureOf(client, statement)
      ready()
      return new Promise<void>((ended) => {
        close = ended
      })
    }
    askAs(testDatabase().ownerUrl, work).catch(failed)
  })
})

afterAll(() => close())

async function fill(at: TestClub): Promise<Ids> {
  const by = at.coach
  const player = at.playerIds[0] as string
  const practice = await enterSession(at, { lengthSeconds: 3600 })
  const otherPractice = await enterSession(at)
  const match = await enterSession(at, { kind: 'match' })
  const [turn, voided, passed] = await at.run(async (tx) => {
    const stations = [{ attack: [player], defend: [], keep: [] }]
    const times = [
      { start: 0, end: 45 },
      { start: 100, end: 200 },
    ]
    const turns = times.map((time) => ({ ...time, themeId: null, stations }))
    const turnIds = await recordTurns(tx, { sessionId: practice, turns, by })
    const pass = { playerId: player, role: 'attack', lengthSeconds: 45 } as const
    const passedIds = await recordPassed(tx, { sessionId: practice, passed: [pass], by })
    await voidTurnEvent(tx, { sessionId: practice, eventId: turnIds[1] as string, by })
    await recordRegister(tx, {
      sessionId: practice,
      lines: [{ playerId: player, state: 'here', from: 0, to: 100 }],
      by,
    })
    await recordSpells(tx, {
      matches: [{ sessionId: match, spells: [{ playerId: player, line: 'back', start: 0, end: 60 }] }],
      by,
    })
    await recordSquadCoach(tx, {
      squadId: at.squadId,
      personId: by.personId,
      kind: 'coach',
      firstDay: '2026-08-01',
      lastDay: null,
    })
    return [turnIds[0] as string, turnIds[1] as string, passedIds[0] as string]
  })
  const theVoid = await askAs(testDatabase().ownerUrl, async (client) => {
    const { rows } = await client.query('select id from "TurnEvent" where "voidsId" = $1', [voided])
    return rows[0].id as string
  })
  return {
    club: at.club.id,
    squad: at.squadId,
    season: at.seasonId,
    term: at.termIds[0],
    coach: by.personId,
    player,
    other: at.playerIds[1] as string,
    theme: at.themeIds[0],
    childTheme: at.themeIds[1],
    practice,
    otherPractice,
    match,
    turn,
    passed,
    voided,
    theVoid,
  }
}
