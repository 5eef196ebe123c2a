import { beforeEach, describe, expect, it, vi } from 'vitest'
import { AppError } from '#common/app-error'
import { listAudit } from '#data/audit'
import { recordGuests } from '#data/guests'
import { newId } from '#data/ids'
import { listPairs, recordPair } from '#data/player-pairs'
import { recordRegister } from '#data/register-lines'
import { findPlan, getPlan } from '#data/session-plans'
import { cancelSession, getSession } from '#data/sessions'
import { draftOf, planOfDraft } from '#planning/plan-draft'
import type { PracticePlan } from '#planning/practice-plan'
import { addPlayerPair, endPlayerPair, savePracticePlan } from '#server/plan-actions'
import { loadPlanPage, loadPlanSheet } from '#server/plan-views'
import { formOfFields as form } from '../support/form-of-fields'
import { askAsPerson, redirectOf } from '../support/next-request'
import { send as sendTaps, tapped } from '../support/pitch-club'
import { aPlanRequest, aPlanRound } from '../support/plan-builder'
import { formOf } from '../support/typed-session'
import { aClubForWriting, askAs, idle, viewerOf } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

/** A plan for the club's five players: three turns of two against one, the last of them asked not to keep. */
function thePlan(change: Partial<PracticePlan> = {}): PracticePlan {
  const request = aPlanRequest({
    players: 5,
    rounds: [aPlanRound({ turnCount: 3, stations: [{ attack: 2, defend: 1, keep: 1 }] })],
    own: { 5: { keeps: false } },
  })
  const players = request.players.map((player, index) => ({
    ...player,
    playerId: at.club.playerIds[index] ?? '',
  }))
  const plan = planOfDraft(draftOf({ ...request, players }))
  if (!plan) throw new Error('no plan for five')
  return { ...plan, ...change }
}

const send = (plan: PracticePlan, change: { knownVersion?: number; squadId?: string } = {}) =>
  savePracticePlan(
    idle,
    formOf({ squadId: at.club.squadId, sessionId: at.sessionId, knownVersion: 0, plan, ...change }),
  )
const stored = () => at.club.run((tx) => findPlan(tx, at.sessionId))
const place = () => ({ squadId: at.club.squadId, sessionId: at.sessionId })

describe('saving a plan', () => {
  it.each(['coach', 'headCoach'] as const)('is for a %s, with an audit row', async (who) => {
    askAs(at.club, who)
    expect(await send(thePlan())).toMatchObject({
      status: 'done',
      message: expect.stringMatching(/^Saved\. /),
    })
    expect(await stored()).toMatchObject({ version: 1, plan: { turns: thePlan().turns } })
    const [audit] = await at.club.run((tx) => listAudit(tx, { limit: 1 }))
    expect(audit).toMatchObject({
      action: 'savePlan',
      objectId: at.sessionId,
      detail: { version: 1, players: 5, turns: 3 },
    })
  })

  it.each(['otherCoach', 'guardian'] as const)('is refused to a %s', async (who) => {
    askAs(at.club, who)
    expect(await send(thePlan())).toMatchObject({
      status: 'refused',
      problems: [{ message: expect.stringContaining('not yours to change') }],
    })
    expect(await stored()).toBeNull()
  })

  it('sends whoever is not signed in to the first page', async () => {
    askAsPerson(null)
    expect(await send(thePlan()).catch(redirectOf)).toBe('/')
    expect(await stored()).toBeNull()
  })

  it('says that somebody else saved meanwhile, and keeps theirs', async () => {
    await send(thePlan())
    const reply = await send(thePlan({ locks: [] }))
    expect(reply).toMatchObject({
      status: 'refused',
      problems: [{ message: expect.stringContaining('Somebody else saved a plan') }],
    })
    expect((await stored())?.version).toBe(1)
    expect(await send(thePlan(), { knownVersion: 1 })).toMatchObject({ status: 'done' })
  })

  it('believes nothing that a plan says of itself', async () => {
    const lie = { sentence: 'The best there ever was.', value: 0, bound: 0, proven: true, restLimitUsed: 1 }
    await send(thePlan({ proof: lie }))
    const { plan } = await at.club.run((tx) => getPlan(tx, at.sessionId))
    expect(plan.proof.sentence).not.toBe(lie.sentence)
    expect(plan.proof.value).toBeGreaterThan(0)
    expect(plan.proof.proven).toBe(false)
    // A bound above the plan's own value is disproved by the plan.
    await send(thePlan({ proof: { ...lie, value: 1e12, bound: 1e12 } }), { knownVersion: 1 })
    expect((await at.club.run((tx) => getPlan(tx, at.sessionId))).plan.proof).toMatchObject({
      bound: 0,
      proven: false,
    })
  })

  it('refuses a plan that breaks a rule, in a sentence, and one by another book', async () => {
    const plan = thePlan()
    const [first, ...others] = plan.turns
    const [station] = first?.stations ?? []
    const eli = at.club.playerIds[4] ?? ''
    const keeper = station?.keep[0] ?? ''
    const swap = (ids: readonly string[]) => ids.map((id) => (id === eli ? keeper : id === keeper ? eli : id))
    const inGoal = {
      ...first,
      stations: [{ attack: swap(station?.attack ?? []), defend: swap(station?.defend ?? []), keep: [eli] }],
    }
    const reply = await send({ ...plan, turns: [inGoal as never, ...others] })
    expect(reply).toMatchObject({
      status: 'refused',
      problems: [{ message: 'Eli Rook is in goal in turn 1 and is not to be. Put somebody else there.' }],
    })
    const richer = plan.players.map((player) => ({ ...player, gap: { ...player.gap, attack: -500 } }))
    expect(await send({ ...plan, players: richer })).toMatchObject({
      problems: [{ message: expect.stringContaining('The season book has changed') }],
    })
    const able = plan.players.map((player) => ({ ...player, keeps: true }))
    expect(await send({ ...plan, players: able })).toMatchObject({ status: 'refused' })
    expect(await stored()).toBeNull()
  })

  it('refuses players and designs that are not the club’s, and a practice that is over or off', async () => {
    const plan = thePlan()
    const stranger = newId()
    const withStranger = JSON.parse(JSON.stringify(plan).replaceAll(at.club.playerIds[0] ?? '', stranger))
    expect(await send(withStranger)).toMatchObject({
      problems: [{ message: expect.stringContaining('no longer known') }],
    })
    expect(await send({ ...plan, design: { ...plan.design, id: newId() } })).toMatchObject({
      problems: [{ message: expect.stringContaining('no longer there') }],
    })
    expect(await send(plan, { squadId: newId() })).toMatchObject({ status: 'refused' })
    const by = at.club.coach
    await at.club.run((tx) => cancelSession(tx, { sessionId: at.sessionId, by }))
    expect(await send(plan)).toMatchObject({
      problems: [{ message: expect.stringContaining('was cancelled') }],
    })
    expect(await stored()).toBeNull()
    expect((await at.club.run((tx) => getSession(tx, at.sessionId))).designId).toBeNull()
  })

  it('refuses a child that is neither of the squad nor in its register: planning is no way to another squad’s names', async () => {
    const guest = { id: newId(), name: 'Gus Tern' }
    await at.club.run((tx) => recordGuests(tx, { guests: [guest], since: '2026-09-08' }))
    const plan = thePlan()
    const withGuest = JSON.parse(JSON.stringify(plan).replaceAll(at.club.playerIds[0] ?? '', guest.id))
    expect(await send(withGuest)).toMatchObject({
      problems: [{ message: expect.stringContaining('no longer known') }],
    })
    const lines = [{ playerId: guest.id, from: 0, to: 60, state: 'here' as const }]
    await at.club.run((tx) => recordRegister(tx, { sessionId: at.sessionId, lines, by: at.club.coach }))
    expect(await send(withGuest)).toMatchObject({ status: 'done' })
  })

  it('refuses a plan that forgets a pair kept apart on its day, unless the two may meet in it', async () => {
    const [oneId = '', otherId = ''] = at.club.playerIds
    const day = { firstDay: '2026-09-08', lastDay: '2026-09-08' }
    await at.club.run((tx) =>
      recordPair(tx, {
        ...{ id: newId(), squadId: at.club.squadId, playerIds: [oneId, otherId], kind: 'apart', ...day },
        madeById: null,
      }),
    )
    expect(await send(thePlan())).toMatchObject({
      problems: [{ message: expect.stringMatching(/^Ada Fenn and Bo Larch are kept apart on this day/) }],
    })
    expect(await send(thePlan({ mayMeet: [[otherId, oneId]] }))).toMatchObject({ status: 'done' })
  })

  it('refuses another plan under a practice that has begun at the pitch', async () => {
    await send(thePlan())
    await sendTaps(at.sessionId, {
      events: [tapped(-5, { kind: 'register', playerId: at.club.playerIds[0] ?? '', state: 'here' })],
    })
    expect(await send(thePlan(), { knownVersion: 1 })).toMatchObject({ status: 'done' })
    await sendTaps(at.sessionId, { events: [tapped(0, { kind: 'begin' })] })
    expect(await send(thePlan(), { knownVersion: 2 })).toMatchObject({
      problems: [{ message: expect.stringContaining('has begun at the pitch') }],
    })
    expect((await loadPlanPage(await viewerOf(at, 'coach'), place())).closed).toContain(
      'has begun at the pitch',
    )
    expect((await stored())?.version).toBe(2)
  })

  it('refuses what is no plan at all, and stays on its feet', async () => {
    for (const plan of [null, 7, {}, { ...thePlan(), turns: 'x' }, { ...thePlan(), extra: 1 }])
      expect(await send(plan as never)).toMatchObject({ status: 'refused' })
  })
})

describe('pairs of players', () => {
  let pair: Record<string, string> = {}
  beforeEach(() => {
    const [oneId = '', otherId = ''] = at.club.playerIds
    pair = {
      squadId: at.club.squadId,
      kind: 'apart',
      oneId,
      otherId,
      firstDay: '2026-09-08',
      lastDay: '2026-12-18',
    }
  })
  const pairs = () => at.club.run((tx) => listPairs(tx, { squadId: at.club.squadId, from: '2026-09-08' }))

  it('are noted without a reason, seen on the page by coaches, and ended', async () => {
    expect(await addPlayerPair(idle, form(pair))).toMatchObject({ status: 'done' })
    const [noted] = await pairs()
    expect(noted).toMatchObject({ kind: 'apart', lastDay: '2026-12-18' })
    for (const who of ['coach', 'headCoach'] as const)
      expect((await loadPlanPage(await viewerOf(at, who), place())).pairs).toHaveLength(1)
    const [audit] = await at.club.run((tx) => listAudit(tx, { limit: 1 }))
    expect(Object.keys(audit?.detail ?? {}).sort()).toEqual(['firstDay', 'kind', 'lastDay'])
    const end = { squadId: at.club.squadId, pairId: noted?.id ?? '' }
    expect(await endPlayerPair(idle, form({ ...end, lastDay: '2026-09-07' }))).toMatchObject({
      status: 'refused',
      problems: [{ path: 'lastDay' }],
    })
    expect(await endPlayerPair(idle, form({ ...end, lastDay: '2026-09-10' }))).toMatchObject({
      status: 'done',
    })
    expect((await pairs())[0]?.lastDay).toBe('2026-09-10')
  })

  it('have a last day, two different players of the squad, and are not noted twice', async () => {
    expect(await addPlayerPair(idle, form({ ...pair, lastDay: '' }))).toMatchObject({
      problems: [{ path: 'lastDay' }],
    })
    expect(await addPlayerPair(idle, form({ ...pair, otherId: pair.oneId ?? '' }))).toMatchObject({
      problems: [{ path: 'otherId', message: expect.stringContaining('same player') }],
    })
    expect(await addPlayerPair(idle, form({ ...pair, otherId: newId() }))).toMatchObject({
      problems: [{ path: 'otherId', message: expect.stringContaining('not known') }],
    })
    await addPlayerPair(idle, form(pair))
    expect(await addPlayerPair(idle, form({ ...pair, kind: 'together' }))).toMatchObject({
      problems: [{ path: 'otherId', message: expect.stringContaining('paired') }],
    })
    expect(await pairs()).toHaveLength(1)
  })

  it.each(['otherCoach', 'guardian'] as const)('are neither noted nor ended by a %s', async (who) => {
    await addPlayerPair(idle, form(pair))
    const [noted] = await pairs()
    askAs(at.club, who)
    expect(await addPlayerPair(idle, form({ ...pair, kind: 'together' }))).toMatchObject({
      status: 'refused',
    })
    const end = { squadId: at.club.squadId, pairId: noted?.id ?? '', lastDay: '2026-09-08' }
    expect(await endPlayerPair(idle, form(end))).toMatchObject({ status: 'refused' })
    expect((await pairs())[0]?.lastDay).toBe('2026-12-18')
  })
})

describe('the pages of a plan', () => {
  it.each(['otherCoach', 'guardian'] as const)('are closed to a %s', async (who) => {
    await send(thePlan())
    const viewer = await viewerOf(at, who)
    await expect(loadPlanPage(viewer, place())).rejects.toThrow(AppError)
    await expect(loadPlanSheet(viewer, place())).rejects.toThrow(AppError)
  })

  it('the sheet carries no pair, limit, difference or reason, and no second name', async () => {
    const [one = '', other = ''] = at.club.playerIds
    const plan = thePlan()
    const players = plan.players.map((player, index) =>
      index === 2 ? { ...player, notInGoal: true } : player,
    )
    const together = [[one, other] as const]
    const remade = planOfDraft(draftOf({ ...plan, players, together }))
    expect(await send(remade as PracticePlan)).toMatchObject({ status: 'done' })
    const sheet = await loadPlanSheet(await viewerOf(at, 'coach'), place())
    const text = JSON.stringify(sheet)
    for (const word of [
      'apart',
      'together',
      '"gap"',
      'notInGoal',
      'waitsAfterEachTurn',
      'mostTurns',
      'locks',
      'keeps"',
      'Fenn',
      'Larch',
    ])
      expect(text).not.toContain(word)
    expect(sheet?.players.map(({ name }) => name)).toEqual(['Ada', 'Bo', 'Cy', 'Di', 'Eli'])
  })

  it('say why a practice cannot be planned', async () => {
    await at.club.run((tx) => cancelSession(tx, { sessionId: at.sessionId, by: at.club.coach }))
    const page = await loadPlanPage(await viewerOf(at, 'coach'), place())
    expect(page.closed).toContain('was cancelled')
  })
})
