import { v7 as uuidv7 } from 'uuid'
import { savePlan } from '#data/session-plans'
import type { Deed, PitchEvent } from '#pitch/pitch-event'
import type { PitchAnswer, PitchPack } from '#pitch/pitch-pack'
import type { PlannedTurn, PracticePlan } from '#planning/practice-plan'
import { answerBatch, answerPack } from '#server/pitch-door'
import type { TestClub } from './test-club'

export const phone = '0190aaaa-0000-7000-8000-000000000001'
export const otherPhone = '0190aaaa-0000-7000-8000-000000000002'

/** When the practice of the tests begins: 18:00 in Europe/London, on its day. */
export const kickOff = Date.UTC(2026, 9, 1, 17, 0, 0)

const nothing = { attack: 0, defend: 0, keep: 0, rest: 0, outnumbering: 0, level: 0, outnumbered: 0 }

/** Two rounds of two turns of a minute, ten seconds between them: two against one with a keeper, one waits. */
export function aPlan(club: TestClub, change: Partial<PracticePlan> = {}): PracticePlan {
  const [a, b, c, d, e] = club.playerIds as [string, string, string, string, string]
  const turn = (round: number, attack: string[], defend: string, keep: string): PlannedTurn => ({
    round,
    seconds: 60,
    gapSeconds: 10,
    stations: [{ attack, defend: [defend], keep: [keep] }],
  })
  const round = {
    turnCount: 2,
    turnSeconds: 60,
    gapSeconds: 10,
    stations: [{ attack: 2, defend: 1, keep: 1 }],
  }
  return {
    design: {
      id: null,
      name: 'Two against one',
      themeId: club.themeIds[1],
      sides: null,
      rounds: [
        { ...round, title: 'First' },
        { ...round, title: 'Second' },
      ],
    },
    players: club.playerIds.map((playerId, index) => ({
      playerId,
      keeps: true,
      side: null,
      present: [[1, 4]],
      notInGoal: index === 4,
      waitsAfterEachTurn: index === 1,
      mostTurns: index === 2 ? 3 : null,
      gap: { ...nothing, attack: 60 - 120 * index },
    })),
    rules: { restLimit: 2, isGentle: true, keepsSides: false },
    apart: [[a, b]],
    together: [[c, d]],
    locks: [{ turn: 1, playerId: a, place: 'rest' }],
    turns: [turn(0, [a, c], b, d), turn(0, [b, c], e, d), turn(1, [a, e], c, d), turn(1, [b, e], a, c)],
    proof: { sentence: 'As fair as five allow.', value: 3, bound: 3, proven: true, restLimitUsed: 2 },
    ...change,
  }
}

export async function planIt(club: TestClub, sessionId: string, plan = aPlan(club)): Promise<PracticePlan> {
  await club.run((tx) => savePlan(tx, { sessionId, plan, knownVersion: 0, by: club.coach }))
  return plan
}

/** One tap, so many seconds after the practice began. */
export function tapped(seconds: number, deed: Deed, change: Partial<PitchEvent> = {}): PitchEvent {
  const at = kickOff + seconds * 1000
  return { id: uuidv7({ msecs: at }), deviceId: phone, at, deed, ...change }
}

/** Everyone here, and both rounds tapped when they were over. */
export function wholePractice(club: TestClub, plan: PracticePlan): readonly PitchEvent[] {
  const round = (index: number) => plan.turns.filter((turn) => turn.round === index)
  return [
    ...club.playerIds.map((playerId, index) =>
      tapped(index - 60, { kind: 'register', playerId, state: 'here' }),
    ),
    tapped(0, { kind: 'begin' }),
    tapped(180, { kind: 'roundDone', round: 0, turns: round(0) }),
    tapped(400, { kind: 'roundDone', round: 1, turns: round(1) }),
    tapped(420, { kind: 'stop' }),
  ]
}

const here = 'http://book.example.org'

type Sent = {
  readonly events?: readonly unknown[]
  readonly cursor?: number
  readonly deviceId?: string
}

/** A batch as a phone sends it, from a page of this address unless said otherwise. */
export function batchRequest(batch: Sent | string, headers: Readonly<Record<string, string>> = {}): Request {
  const body = typeof batch === 'string' ? batch : { deviceId: phone, cursor: 0, events: [], ...batch }
  return new Request(`${here}/api/pitch/any`, {
    method: 'POST',
    headers: {
      'content-type': 'application/json',
      host: 'book.example.org',
      origin: here,
      'sec-fetch-site': 'same-origin',
      ...headers,
    },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  })
}

export type Answered<Value> = { readonly status: number; readonly body: Value & { readonly why?: string } }

export async function send(sessionId: string, batch: Sent): Promise<Answered<PitchAnswer>> {
  return read(await answerBatch(batchRequest(batch), sessionId))
}

export async function fetchPack(sessionId: string): Promise<Answered<PitchPack>> {
  return read(await answerPack(sessionId))
}

export async function read<Value>(response: Response): Promise<Answered<Value>> {
  return { status: response.status, body: await response.json() }
}
