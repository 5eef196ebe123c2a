import { beforeEach, describe, expect, it, vi } from 'vitest'
import { AppError } from '#common/app-error'
import { listAudit } from '#data/audit'
import { newId } from '#data/ids'
import { recordPair } from '#data/player-pairs'
import { findMatchPlan } from '#data/session-plans'
import { cancelSession, recordSessions } from '#data/sessions'
import { recordSquads } from '#data/squads'
import type { MatchPlan } from '#lineup/match-plan'
import { saveLineUp } from '#server/line-up-actions'
import { loadLineUpPage, loadLineUpPrint } from '#server/line-up-views'
import { rebuildSession } from '#server/rebuild'
import { writeMatch } from '#server/session-actions'
import { threeOn } from '../support/line-up-builder'
import { matchRequestOf } from '../support/match-request-builder'
import { askAsPerson, redirectOf } from '../support/next-request'
import { planAtOnce } from '../support/plan-at-once'
import { aSession, enterSession } from '../support/test-club'
import { typeMatchIn } from '../support/typed-in-match'
import { formOf, typedMatch } from '../support/typed-session'
import { type Asker, aClubForWriting, askAs, idle, versionNow, viewerOf } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
const threeASide = {
  aSide: 3,
  periodSeconds: [600, 600],
  shapes: [{ name: '1-1-0', places: threeOn }],
}

beforeEach(async () => {
  at.sessionId = await enterSession(at.club, { kind: 'match', day: '2026-10-10', periods: null })
})

const place = () => ({ squadId: at.club.squadId, sessionId: at.sessionId })
const stored = () => at.club.run((tx) => findMatchPlan(tx, at.sessionId))
const pageOf = async (who: Asker) => loadLineUpPage(await viewerOf(at, who), place())

/** A line-up of the club's five, three a side, by the book as the page has it. */
async function theLineUp(change: Partial<MatchPlan> = {}): Promise<MatchPlan> {
  const { players } = await pageOf('coach')
  return planAtOnce({ ...matchRequestOf(players, threeASide), ...change })
}
const send = (plan: MatchPlan, knownVersion = 0) =>
  saveLineUp(idle, formOf({ ...place(), knownVersion, plan }))

describe('saving a line-up', () => {
  it.each(['coach', 'headCoach'] as const)('is for a %s, with a line in the record', async (who) => {
    const plan = await theLineUp()
    askAs(at.club, who)
    expect(await send(plan)).toMatchObject({ status: 'done', message: expect.stringMatching(/^Saved\. /) })
    expect(await stored()).toMatchObject({ version: 1, plan: { spells: plan.spells } })
    const [audit] = await at.club.run((tx) => listAudit(tx, { limit: 1 }))
    expect(audit).toMatchObject({ action: 'saveLineUp', objectId: at.sessionId, detail: { players: 5 } })
  })

  it.each(['otherCoach', 'guardian'] as const)('is refused to a %s', async (who) => {
    const plan = await theLineUp()
    askAs(at.club, who)
    expect(await send(plan)).toMatchObject({ status: 'refused' })
    askAsPerson(null)
    expect(await send(plan).catch(redirectOf)).toBe('/')
    expect(await stored()).toBeNull()
  })

  it('says that somebody else saved meanwhile, and keeps theirs', async () => {
    const plan = await theLineUp()
    await send(plan)
    expect(await send(plan)).toMatchObject({
      status: 'refused',
      problems: [{ message: expect.stringContaining('Somebody else saved a line-up') }],
    })
    expect((await stored())?.version).toBe(1)
    expect(await send(plan, 1)).toMatchObject({ status: 'done' })
  })

  it('believes nothing that a line-up says of itself', async () => {
    const plan = await theLineUp()
    const goals = { ...plan.proof.goals, minutes: { value: 0, bound: 0, proven: true } }
    await send({ ...plan, proof: { sentence: 'The best there ever was.', goals } })
    expect((await stored())?.plan.proof).toEqual(plan.proof)
    // A bound above what the line-up itself is worth is disproved by it.
    const high = { value: 1e12, bound: 1e12, proven: true }
    await send({ ...plan, proof: { ...plan.proof, goals: { ...plan.proof.goals, minutes: high } } }, 1)
    expect((await stored())?.plan.proof.goals.minutes).toEqual(plan.proof.goals.minutes)
  })

  it('refuses one that breaks a rule, in a sentence', async () => {
    const plan = await theLineUp()
    const [one, ...others] = plan.spells
    if (!one) throw new Error('nobody is on')
    expect(await send({ ...plan, spells: others })).toMatchObject({
      status: 'refused',
      problems: expect.arrayContaining([
        { path: '', message: expect.stringContaining('not every line has as many players') },
      ]),
    })
    expect(await send({ ...plan, spells: [{ ...one, end: one.end - 1 }, ...others] })).toMatchObject({
      problems: [{ message: expect.stringContaining('do not fit its periods') }],
    })
    const nowhere = { keeper: 0, back: 0, middle: 0, forward: 0 }
    expect(await send({ ...plan, places: nowhere, spells: [] })).toMatchObject({
      problems: [{ message: expect.stringContaining('than the match has players a side') }],
    })
    expect(await stored()).toBeNull()
  })

  it('refuses one that holds a place for, or lets meet, who is of no squad here', async () => {
    const plan = await theLineUp()
    const [one = ''] = at.club.playerIds
    const held = { playerId: newId(), start: 0, end: 600, place: 'off' } as const
    const unknown = { problems: [{ message: expect.stringContaining('no longer known in the club') }] }
    expect(await send({ ...plan, locks: [held] })).toMatchObject(unknown)
    expect(await send({ ...plan, mayMeet: [[one, newId()]] })).toMatchObject(unknown)
    expect(await stored()).toBeNull()
  })

  it('refuses one by another book, and one that forgets who is kept apart', async () => {
    const plan = await theLineUp()
    const [first, ...others] = plan.players
    if (!first) throw new Error('nobody')
    const owed = { ...first.owed, playSeconds: 600 }
    expect(await send({ ...plan, players: [{ ...first, owed }, ...others] })).toMatchObject({
      problems: [{ message: expect.stringContaining('season book has changed') }],
    })
    const [one = '', other = ''] = at.club.playerIds
    const pair = { squadId: at.club.squadId, kind: 'apart', firstDay: '2026-10-01', lastDay: null } as const
    await at.club.run((tx) =>
      recordPair(tx, { ...pair, id: newId(), playerIds: [one, other], madeById: null }),
    )
    expect(await send(plan)).toMatchObject({
      problems: [{ message: expect.stringContaining('are kept apart on this day') }],
    })
    expect(await send({ ...plan, mayMeet: [[one, other]] })).toMatchObject({ status: 'done' })
  })

  it('is not for a match that was cancelled, nor for a practice', async () => {
    const plan = await theLineUp()
    const by = { personId: at.club.coach.personId, at: new Date() }
    await at.club.run((tx) => cancelSession(tx, { sessionId: at.sessionId, by }))
    expect(await send(plan)).toMatchObject({ problems: [{ message: expect.stringContaining('cancelled') }] })
    at.sessionId = await enterSession(at.club, { day: '2026-10-11' })
    expect(await send(plan)).toMatchObject({
      problems: [{ message: 'This is a practice: line-ups are for matches.' }],
    })
  })
})

describe('the page of a line-up', () => {
  it('has what the season’s matches leave everyone due', async () => {
    const before = at.sessionId
    at.sessionId = await enterSession(at.club, { kind: 'match', day: '2026-09-12', periods: null })
    // Forty minutes, five there, four on, one of them in goal; the fifth may not keep it.
    const typed = ['K K K', 'B B M', 'F O F', 'M F .', '. M B']
    const version = await versionNow(at)
    await writeMatch(idle, formOf(typedMatch(at.club, typed, { sessionId: at.sessionId, version })))
    at.sessionId = before
    const { players } = await pageOf('coach')
    const owed = at.club.playerIds.map((id) => players.find((own) => own.id === id)?.owed)
    // By hand: who may keep goal is due 1/4 of the time of it and 3/4 · 3/4 of the rest, 1950 s; the fifth 3/4, 1800 s.
    expect(owed.map((own) => own?.playSeconds)).toEqual([-450, -450, 150, 750, 0])
    expect(owed.map((own) => own?.keepSeconds)).toEqual([-1800, 600, 600, 600, 0])
    // The first four began, of whom each was due 13/16 of a start; the fifth 3/4.
    expect(owed.map((own) => own?.starts)).toEqual([-3 / 16, -3 / 16, -3 / 16, -3 / 16, 3 / 4])
    expect(players.find(({ id }) => id === at.club.playerIds[2])?.metSeconds).toEqual({
      back: 0,
      middle: 0,
      forward: 1800,
    })
  })

  it('counts what somebody played on the day with another squad, in a match', async () => {
    const [one = '', other = ''] = at.club.playerIds
    const squadId = newId()
    const elsewhere = aSession({ squadId, kind: 'match', day: '2026-09-12' })
    await at.club.run(async (tx) => {
      await recordSquads(tx, [{ id: squadId, name: 'Under 11', ageLimit: 11 }])
      await recordSessions(tx, [elsewhere])
      await typeMatchIn(tx, { sessionId: elsewhere.id, playerIds: [one], by: at.club.coach })
      await rebuildSession(tx, elsewhere.id)
    })
    at.sessionId = await enterSession(at.club, { kind: 'match', day: '2026-09-12', periods: null })
    const { players } = await pageOf('coach')
    expect(players.find(({ id }) => id === one)?.playedToday).toBe(1200)
    expect(players.find(({ id }) => id === other)?.playedToday).toBe(0)
  })

  it('is for who may plan; the sheet is for who sees the squad, without what is owed', async () => {
    await send(await theLineUp())
    expect((await pageOf('headCoach')).plan?.players).toHaveLength(5)
    await expect(pageOf('guardian')).rejects.toBeInstanceOf(AppError)
    await expect(pageOf('otherCoach')).rejects.toBeInstanceOf(AppError)
    const print = await loadLineUpPrint(await viewerOf(at, 'coach'), place())
    expect(Object.keys(print?.players[0] ?? {})).toEqual(['id', 'name'])
    expect(JSON.stringify(print)).not.toMatch(/owed|apart|together|proof/)
    await expect(loadLineUpPrint(await viewerOf(at, 'guardian'), place())).rejects.toBeInstanceOf(AppError)
  })
})
