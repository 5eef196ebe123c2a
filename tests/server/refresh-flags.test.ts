import { describe, expect, it } from 'vitest'
import { acknowledgeFlag, findFlagPlace, listFlagStates } from '#data/flag-states'
import { newId } from '#data/ids'
import { recordRegister } from '#data/register-lines'
import { markWritten } from '#data/sessions'
import { recordTurns } from '#data/turn-events'
import { rebuildSession } from '#server/rebuild'
import { refreshFlags } from '#server/refresh-flags'
import { aClub, enterSession, type TestClub } from '../support/test-club'

const turnCount = 20
const turnSeconds = 60

/**
 * A practice of twenty turns of a minute, two attackers against one, four there. The one named waits in every turn, or
 * attacks in every turn; or keeps in every turn, of one attacker against one. Each is due 2/4 of attack in each turn where
 * two attack: 600 s a practice.
 */
async function practise(
  club: TestClub,
  at: { day: string; first: 'waits' | 'attacks' | 'keeps' },
): Promise<void> {
  const [first, b, c, d] = club.playerIds as [string, string, string, string]
  const sessionId = await enterSession(club, { day: at.day })
  const attack = { waits: [b, c], attacks: [first, b], keeps: [b] }[at.first]
  const keep = at.first === 'keeps' ? [first] : []
  const turns = Array.from({ length: turnCount }, (_, index) => ({
    start: index * turnSeconds,
    end: (index + 1) * turnSeconds,
    themeId: null,
    stations: [{ attack, defend: [d], keep }],
  }))
  await club.run(async (tx) => {
    const by = club.coach
    const lines = club.playerIds.map((playerId) => ({ playerId, state: 'here' as const, from: 0, to: 3600 }))
    await recordRegister(tx, { sessionId, lines, by })
    await recordTurns(tx, { sessionId, turns, by })
    await markWritten(tx, { sessionIds: [sessionId], written: 'tapped', by })
    await rebuildSession(tx, sessionId)
  })
}

function judge(club: TestClub, today: string): Promise<void> {
  const now = new Date(`${today}T20:00:00Z`)
  return club.run((tx) => refreshFlags(tx, { squadId: club.squadId, seasonId: club.seasonId, today, now }))
}

async function attackFlag(club: TestClub) {
  const flags = await club.run((tx) =>
    listFlagStates(tx, { squadIds: [club.squadId], seasonId: club.seasonId }),
  )
  return flags.find(({ rule, playerId }) => rule === 'attackShort' && playerId === club.playerIds[0]) ?? null
}

const days = ['2026-09-01', '2026-09-08', '2026-09-15', '2026-09-22', '2026-09-29', '2026-10-06']

describe('flags kept', () => {
  it('speak from the fourth written session, with what is due and what would put it right', async () => {
    const club = await aClub({ players: 4 })
    for (const day of days.slice(0, 3)) await practise(club, { day, first: 'waits' })
    await judge(club, '2026-09-20')
    expect(await attackFlag(club)).toBeNull()
    await practise(club, { day: '2026-09-22', first: 'waits' })
    await judge(club, '2026-09-22')
    // 4 × 600 s due and nothing got; 2400 s less a band of max(600, 15 % of 2400) is thirty turns of a minute.
    expect(await attackFlag(club)).toMatchObject({
      status: 'open',
      scope: 'practice',
      gapSeconds: -2400,
      toleranceSeconds: 600,
      cure: { kind: 'moreTurns', turns: 30, seconds: 1800 },
      acknowledged: null,
      clearedAt: null,
    })
  })

  it('judge nothing beyond today', async () => {
    const club = await aClub({ players: 4 })
    for (const day of days.slice(0, 4)) await practise(club, { day, first: 'waits' })
    await judge(club, '2026-09-21')
    expect(await attackFlag(club)).toBeNull()
  })

  it('keep silent once a coach has answered, come back when they get worse, and are cleared when they no longer hold', async () => {
    const club = await aClub({ players: 4 })
    for (const day of days.slice(0, 4)) await practise(club, { day, first: 'waits' })
    await judge(club, '2026-09-22')
    const flagId = (await attackFlag(club))?.id as string
    const answer = () =>
      club.run((tx) => acknowledgeFlag(tx, { flagId, reason: 'Attacks on Tuesday.', by: club.coach }))
    expect(await answer()).toEqual({ ok: true, value: null })
    await judge(club, '2026-09-23')
    const { size } = (await attackFlag(club)) ?? {}
    expect(await attackFlag(club)).toMatchObject({
      id: flagId,
      status: 'acknowledged',
      acknowledged: { by: 'Kit Vale', at: club.coach.at, reason: 'Attacks on Tuesday.', size },
    })
    for (const day of days.slice(4)) await practise(club, { day, first: 'waits' })
    await judge(club, '2026-10-06')
    expect(await attackFlag(club)).toMatchObject({ id: flagId, status: 'open', gapSeconds: -3600 })
    for (const month of ['10', '11']) {
      for (const day of ['10', '17', '24'])
        await practise(club, { day: `2026-${month}-${day}`, first: 'attacks' })
    }
    await judge(club, '2026-11-30')
    const cleared = await attackFlag(club)
    expect(cleared).toMatchObject({
      id: flagId,
      status: 'cleared',
      clearedAt: new Date('2026-11-30T20:00:00Z'),
    })
    expect(await answer()).toEqual({ ok: false, reasons: ['cleared'] })
    const open = await club.run((tx) =>
      listFlagStates(tx, {
        squadIds: [club.squadId],
        seasonId: club.seasonId,
        statuses: ['open', 'acknowledged'],
      }),
    )
    expect(open.map(({ id }) => id)).not.toContain(flagId)
  })

  it('of one term, answered, leave those of the next term to be answered', async () => {
    const club = await aClub({ players: 4 })
    const goalFlags = async () => {
      const flags = await club.run((tx) =>
        listFlagStates(tx, { squadIds: [club.squadId], seasonId: club.seasonId }),
      )
      return flags.filter(({ rule, playerId }) => rule === 'goalShareOver' && playerId === club.playerIds[0])
    }
    for (const day of days.slice(0, 2)) await practise(club, { day, first: 'keeps' })
    await judge(club, '2026-09-08')
    const [autumn] = await goalFlags()
    expect(autumn).toMatchObject({ subject: club.termIds[0], status: 'open', size: 1200 })
    const flagId = autumn?.id as string
    await club.run((tx) => acknowledgeFlag(tx, { flagId, reason: 'Wants to learn it.', by: club.coach }))
    // Half as much over as what was answered in autumn: had the answer been for both, it would keep silent.
    await practise(club, { day: '2027-01-12', first: 'keeps' })
    await judge(club, '2027-01-12')
    const [spring, ...others] = (await goalFlags()).filter(({ status }) => status !== 'cleared')
    expect(others).toEqual([])
    expect(spring).toMatchObject({
      subject: club.termIds[1],
      status: 'open',
      since: '2027-01-12',
      size: 600,
      acknowledged: null,
    })
    expect((await goalFlags()).find(({ id }) => id === flagId)).toMatchObject({
      status: 'cleared',
      acknowledged: { reason: 'Wants to learn it.', size: 1200 },
    })
  })

  it('are raised once by two who judge at the same time', async () => {
    const club = await aClub({ players: 4 })
    for (const day of days.slice(0, 4)) await practise(club, { day, first: 'waits' })
    await Promise.all([judge(club, '2026-09-22'), judge(club, '2026-09-22'), judge(club, '2026-09-22')])
    expect(await attackFlag(club)).toMatchObject({ status: 'open', gapSeconds: -2400 })
  })

  it('are found with their squad, for who may answer them', async () => {
    const club = await aClub({ players: 4 })
    for (const day of days.slice(0, 4)) await practise(club, { day, first: 'waits' })
    await judge(club, '2026-09-22')
    const flag = await attackFlag(club)
    expect(await club.run((tx) => findFlagPlace(tx, flag?.id ?? ''))).toEqual({
      squadId: club.squadId,
      playerId: club.playerIds[0],
    })
    expect(await club.run((tx) => findFlagPlace(tx, newId()))).toBeNull()
    const unknown = club.run((tx) => acknowledgeFlag(tx, { flagId: 'no id', reason: 'x', by: club.coach }))
    expect(await unknown).toEqual({ ok: false, reasons: ['unknown'] })
  })
})
