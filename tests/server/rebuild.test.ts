import { describe, expect, it } from 'vitest'
import { type SummedColumn, sumAccounts } from '#data/account-sums'
import { listAccounts } from '#data/accounts'
import { countSessions, sumPresences } from '#data/presence-sums'
import { recordRegister } from '#data/register-lines'
import { cancelSession, markWritten } from '#data/sessions'
import { recordTurns, voidTurnEvent } from '#data/turn-events'
import type { SessionAccount } from '#fairness/account'
import { accountMatch } from '#fairness/account-match'
import { accountPractice } from '#fairness/account-practice'
import { type Standing, standingsNow } from '#fairness/standing'
import { addFigures, noFigure, type StandingFigure } from '#fairness/standing-figure'
import { rebuildSession, rebuildSquad } from '#server/rebuild'
import { isMemberOn } from '#squad/squad'
import { type RandomBook, randomBook, recordBook, richBook } from '../support/random-book'
import { aClub, enterSession, type TestClub } from '../support/test-club'

const size = { players: 12, practices: 14, turns: 12, matches: 6 }
const seeds = Array.from({ length: 7 }, (_, index) => 300 + index)
const year = { from: '2026-01-01', to: '2026-12-31' }

/** The accounts of a book folded straight from its values, past the database. */
function foldedAccounts(book: RandomBook): readonly SessionAccount[] {
  const rules = ({ id, day }: { id: string; day: string }) => ({
    able: new Set(
      book.playerIds.filter((id) => {
        const turns = book.turned.get(id)
        return book.able.has(id) !== (turns !== undefined && turns <= day)
      }),
    ),
    members: new Set(book.playerIds.filter((playerId) => isMemberOn(book.memberships, { playerId, day }))),
    middleAttackShare: 0.5,
    written: book.written.get(id) ?? 'notWritten',
  })
  return [
    ...book.practices.map((practice) => accountPractice(practice, rules(practice))),
    ...book.matches.map((match) => accountMatch(match, rules(match))),
  ].filter(({ sessionId }) => !book.cancelled.has(sessionId))
}

const keyOf = (line: SessionAccount['lines'][number]) =>
  [line.playerId, line.role, line.situation, line.line, line.themeId].join(' ')

/** Numbers to be compared to 1e-9 by what they belong to; rows of nothing are nothing. */
function figuresOf(accounts: readonly SessionAccount[]): Map<string, number> {
  const figures = new Map<string, number>()
  for (const account of accounts) {
    for (const line of account.lines) {
      for (const name of [
        'seconds',
        'turns',
        'fairSeconds',
        'fairTurns',
        'fullFairSeconds',
        'openGoalFairSeconds',
      ] as const) {
        if (line[name] !== 0) figures.set([account.sessionId, keyOf(line), name].join(' '), line[name])
      }
    }
  }
  return figures
}

function expectSame(found: Map<string, number>, wanted: Map<string, number>): void {
  expect([...found.keys()].sort()).toEqual([...wanted.keys()].sort())
  for (const [key, value] of wanted) {
    const difference = Math.abs((found.get(key) ?? Number.NaN) - value)
    if (!(difference <= 1e-9 * Math.max(1, Math.abs(value))))
      expect([key, found.get(key)]).toEqual([key, value])
  }
}

async function rebuiltClub(book: RandomBook): Promise<TestClub> {
  const club = await aClub({ players: 0 })
  await recordBook(club, book)
  await club.run((tx) => rebuildSquad(tx, { squadId: club.squadId }))
  return club
}

describe('accounts kept in the database', () => {
  it.each(seeds)('are what the values fold into (season %i)', async (seed) => {
    const book = randomBook(seed, size)
    const club = await rebuiltClub(book)
    const kept = await club.run((tx) => listAccounts(tx, { squadId: club.squadId, ...year }))
    const folded = foldedAccounts(book)
    expectSame(figuresOf(kept), figuresOf(folded))
    const rest = (accounts: readonly SessionAccount[]) =>
      new Map(
        accounts.map(({ lines: _lines, presences, ...account }) => [
          account.sessionId,
          { ...account, presences: new Map(presences.map((one) => [one.playerId, one])) },
        ]),
      )
    expect(rest(kept)).toEqual(rest(folded))
    const days = kept.map(({ day }) => day)
    expect(days).toEqual(days.toSorted())
  })
})

/** Sums of columns as the figures of a standing. */
function sumsOf(columns: readonly SummedColumn[]): Map<string, number> {
  const sums = new Map<string, StandingFigure>()
  const add = (name: string, column: SummedColumn) =>
    sums.set(name, addFigures(sums.get(name) ?? noFigure, pick(column)))
  for (const column of columns) {
    const at = `${column.playerId} ${column.kind}`
    add(`${at} ${column.role}`, column)
    if (column.situation) add(`${at} ${column.situation}`, column)
    if (column.themeId && column.role !== 'rest') add(`${at} ${column.themeId}`, column)
  }
  return flat(sums)
}

function standingsOf(standings: ReadonlyMap<string, Standing>): Map<string, number> {
  const sums = new Map<string, StandingFigure>()
  for (const [playerId, standing] of standings) {
    for (const kind of ['practice', 'match'] as const) {
      const { roles, situations, themes } = standing[kind]
      for (const [name, figure] of [...Object.entries(roles), ...Object.entries(situations), ...themes]) {
        sums.set(`${playerId} ${kind} ${name}`, pick(figure))
      }
    }
  }
  return flat(sums)
}

function pick(figure: StandingFigure): StandingFigure {
  return Object.fromEntries(
    Object.keys(noFigure).map((name) => [name, figure[name as keyof StandingFigure]]),
  ) as StandingFigure
}

function flat(sums: ReadonlyMap<string, StandingFigure>): Map<string, number> {
  return new Map(
    [...sums].flatMap(([key, figure]) =>
      Object.entries(figure).flatMap(([name, value]) =>
        value === 0 ? [] : [[`${key} ${name}`, value] as const],
      ),
    ),
  )
}

describe('accounts summed in the database', () => {
  it.each(seeds)(
    'are the standings that their accounts add up to, members and guests apart (season %i)',
    async (seed) => {
      const book = randomBook(seed, size)
      const club = await rebuiltClub(book)
      const columns = await club.run((tx) => sumAccounts(tx, { squadIds: [club.squadId], ...year }))
      for (const as of ['member', 'guest'] as const) {
        const standings = standingsNow({ accounts: foldedAccounts(book), agreements: book.agreements, as })
        expectSame(
          sumsOf(columns.filter(({ isMember }) => isMember === (as === 'member'))),
          standingsOf(standings),
        )
      }
    },
  )

  it('narrow to days, kinds, ways of writing, players, themes and situations', async () => {
    const book = richBook(400)
    const club = await rebuiltClub(book)
    const accounts = foldedAccounts(book)
    const themeId =
      book.practices.flatMap(({ turns }) => turns.flatMap((turn) => turn.themeId ?? []))[0] ?? null
    const playerId = book.playerIds[1] as string
    const seconds = async (filter: object) => {
      const asked = { squadIds: [club.squadId], ...year, ...filter }
      const columns = await club.run((tx) => sumAccounts(tx, asked))
      return columns.reduce((sum, column) => sum + column.seconds, 0)
    }
    type Line = SessionAccount['lines'][number]
    const folded = (takes: (account: SessionAccount) => boolean, line: (one: Line) => boolean = () => true) =>
      accounts
        .filter(takes)
        .reduce((sum, { lines }) => sum + lines.filter(line).reduce((all, one) => all + one.seconds, 0), 0)
    const every = () => true
    const cases: readonly [object, number][] = [
      [{}, folded(every)],
      [{ to: '2026-06-30' }, folded(({ day }) => day <= '2026-06-30')],
      [{ from: '2026-06-30' }, folded(({ day }) => day >= '2026-06-30')],
      [{ kinds: ['match'] }, folded(({ kind }) => kind === 'match')],
      [
        { writtens: ['tapped', 'asPlanned'] },
        folded(({ written }) => written === 'tapped' || written === 'asPlanned'),
      ],
      [{ playerIds: [playerId] }, folded(every, (one) => one.playerId === playerId)],
      [{ themeIds: [themeId] }, folded(every, (one) => one.themeId === themeId)],
      [{ themeIds: [null] }, folded(every, (one) => one.themeId === null)],
      [{ situations: ['outnumbering'] }, folded(every, (one) => one.situation === 'outnumbering')],
      [{ themeIds: [] }, 0],
      [{ squadIds: [] }, 0],
    ]
    for (const [filter, wanted] of cases) expect([filter, await seconds(filter)]).toEqual([filter, wanted])
    expect(cases.filter(([, wanted]) => wanted > 0)).toHaveLength(9)
  })

  it('count presences, attendance and ways of writing', async () => {
    const book = richBook(500)
    const club = await rebuiltClub(book)
    const accounts = foldedAccounts(book)
    const asked = { squadIds: [club.squadId], ...year }
    const sums = await club.run((tx) => sumPresences(tx, asked))
    expect(sums.length).toBeGreaterThan(5)
    for (const sum of sums) {
      const own = accounts
        .filter(({ kind }) => kind === sum.kind)
        .flatMap(({ presences }) =>
          presences.filter((one) => one.playerId === sum.playerId && one.isMember === sum.isMember),
        )
      const total = (of: (one: (typeof own)[number]) => number) => own.reduce((all, one) => all + of(one), 0)
      expect(sum).toMatchObject({
        squadId: club.squadId,
        sessions: own.length,
        sessionsPlayed: total(({ liveSeconds }) => (liveSeconds > 0 ? 1 : 0)),
        liveSeconds: total(({ liveSeconds }) => liveSeconds),
        turnsPresent: total(({ turnsPresent }) => turnsPresent),
        longestRestTurns: Math.max(...own.map(({ longestRestTurns }) => longestRestTurns)),
      })
      for (const [name, times] of Object.entries(sum.attendance)) {
        expect([name, times]).toEqual([name, total(({ attendance }) => (attendance === name ? 1 : 0))])
      }
    }
    const counts = await club.run((tx) => countSessions(tx, asked))
    for (const count of counts) {
      const own = accounts.filter(({ kind, written }) => kind === count.kind && written === count.written)
      expect(count.sessions).toBe(own.length)
    }
    expect(counts.reduce((sum, { sessions }) => sum + sessions, 0)).toBe(accounts.length)
  })
})

describe('rebuilding one session', () => {
  async function playedPractice() {
    const club = await aClub({ players: 3 })
    const [a, b, c] = club.playerIds as [string, string, string]
    const sessionId = await enterSession(club)
    const by = club.coach
    const turns = [0, 100].map((start) => ({
      start,
      end: start + 60,
      themeId: null,
      stations: [{ attack: [a], defend: [b], keep: [] }],
    }))
    const eventIds = await club.run(async (tx) => {
      const lines = [a, b, c].map((playerId) => ({ playerId, state: 'here' as const, from: 0, to: 200 }))
      await recordRegister(tx, { sessionId, lines, by })
      const ids = await recordTurns(tx, { sessionId, turns, by })
      await markWritten(tx, { sessionIds: [sessionId], written: 'tapped', by })
      await rebuildSession(tx, sessionId)
      return ids
    })
    const accounts = () => club.run((tx) => listAccounts(tx, { squadId: club.squadId, ...year }))
    return { club, sessionId, eventIds, by, accounts, players: [a, b, c] as const }
  }

  it('follows a correction', async () => {
    const { club, sessionId, eventIds, by, accounts, players } = await playedPractice()
    const attackOf = async () =>
      (await accounts())[0]?.lines.find(({ playerId, role }) => playerId === players[0] && role === 'attack')
    // Three are there for 60 + 60 seconds of one attacker: each is due a third.
    expect(await attackOf()).toMatchObject({ seconds: 120, turns: 2, fairSeconds: 40 })
    await club.run(async (tx) => {
      await voidTurnEvent(tx, { sessionId, eventId: eventIds[0] as string, by })
      await rebuildSession(tx, sessionId)
    })
    expect(await attackOf()).toMatchObject({ seconds: 60, turns: 1, fairSeconds: 20 })
  })

  it('keeps nothing of a cancelled session, and attendance alone of one not written', async () => {
    const { club, sessionId, by, accounts } = await playedPractice()
    await club.run(async (tx) => {
      await markWritten(tx, { sessionIds: [sessionId], written: 'notWritten', by })
      await rebuildSession(tx, sessionId)
    })
    expect(await accounts()).toMatchObject([{ liveSeconds: 0, lines: [], presences: [{}, {}, {}] }])
    await club.run(async (tx) => {
      await cancelSession(tx, { sessionId, by })
      await rebuildSession(tx, sessionId)
    })
    expect(await accounts()).toEqual([])
    expect(await club.run((tx) => sumPresences(tx, { squadIds: [club.squadId], ...year }))).toEqual([])
  })

  it('refuses books that do not balance, and leaves everything as it was', async () => {
    const { club, sessionId, by, accounts, players } = await playedPractice()
    const before = await accounts()
    const gone = { playerId: players[0], state: 'here' as const, from: 0, to: 30 }
    const failed = club.run(async (tx) => {
      await recordRegister(tx, { sessionId, lines: [gone], by })
      await rebuildSession(tx, sessionId)
    })
    await expect(failed).rejects.toMatchObject({ name: 'InvariantError' })
    expect(await accounts()).toEqual(before)
    await club.run((tx) => rebuildSession(tx, sessionId))
    expect(await accounts()).toEqual(before)
  })
})
