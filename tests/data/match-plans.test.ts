import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { findMatchPlan, getMatchPlan, listPlanned, savePlan } from '#data/session-plans'
import { matchPlanShape } from '#exchange/match-plan-json'
import { aMatchRequest, nameOf } from '../support/match-request-builder'
import { planAtOnce } from '../support/plan-at-once'
import { aClub, enterSession, type TestClub } from '../support/test-club'

function aPlan() {
  const asked = aMatchRequest({ players: 9 })
  const request = { ...asked, players: asked.players.map((own) => ({ ...own, playerId: newId() })) }
  return planAtOnce(request, nameOf)
}
const plan = aPlan()
const aMatch = (at: TestClub) => enterSession(at, { kind: 'match', day: '2026-09-12' })

describe('line-ups in the database', () => {
  it('come back as they went in, and are replaced as a whole', async () => {
    const at = await aClub()
    const sessionId = await aMatch(at)
    const save = (knownVersion: number, sent = plan) =>
      at.run((tx) => savePlan(tx, { sessionId, plan: sent, knownVersion, by: at.coach }))
    expect(await at.run((tx) => findMatchPlan(tx, sessionId))).toBeNull()
    expect(await save(0)).toBe(1)
    expect(await at.run((tx) => getMatchPlan(tx, sessionId))).toEqual({
      sessionId,
      version: 1,
      plan,
      madeById: at.coach.personId,
      madeAt: at.coach.at,
    })
    const changed = { ...plan, leastShare: null, spells: plan.spells.slice(1) }
    expect(await save(1, changed)).toBe(2)
    expect(await at.run((tx) => getMatchPlan(tx, sessionId))).toMatchObject({ version: 2, plan: changed })
  })

  it('whoever knew another version is refused, of two at once one', async () => {
    const at = await aClub()
    const sessionId = await aMatch(at)
    const save = (knownVersion: number) =>
      at.run((tx) => savePlan(tx, { sessionId, plan, knownVersion, by: at.coach }))
    await expect(save(1)).rejects.toMatchObject({ code: 'conflict' })
    const both = await Promise.allSettled([save(0), save(0)])
    expect(both.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected'])
    const other = await aMatch(at)
    const found = await at.run((tx) => listPlanned(tx, [sessionId, other, 'no id']))
    expect([...found]).toEqual([sessionId])
  })

  it('a club sees no line-up of another, and there is none of a match that is not there', async () => {
    const [at, other] = [await aClub(), await aClub()]
    const sessionId = await aMatch(at)
    await at.run((tx) => savePlan(tx, { sessionId, plan, knownVersion: 0, by: at.coach }))
    expect(await other.run((tx) => findMatchPlan(tx, sessionId))).toBeNull()
    await expect(other.run((tx) => getMatchPlan(tx, sessionId))).rejects.toMatchObject({ code: 'notFound' })
    await expect(
      at.run((tx) => savePlan(tx, { sessionId: newId(), plan, knownVersion: 0, by: at.coach })),
    ).rejects.toMatchObject({ code: 'notFound' })
  })
})

describe('the form of a stored line-up', () => {
  const [firstSpell] = plan.spells
  const marksOf = (count: number) => Array.from({ length: count }, (_, index) => index + 1)

  it('takes what was made, through JSON too', () => {
    expect(matchPlanShape.parse(JSON.parse(JSON.stringify(plan)))).toEqual(plan)
  })

  it.each([
    ['a key that is not known', { surprise: 1 }],
    ['a spell in no line', { spells: [{ ...firstSpell, line: 'wing' }] }],
    ['a spell of half a second', { spells: [{ ...firstSpell, end: 0.5 }] }],
    ['a spell of what is no player', { spells: [{ ...firstSpell, playerId: 'a name' }] }],
    ['more times for changes than a match has', { marks: [60, 60].map((count) => marksOf(count)) }],
    ['a share above all', { leastShare: 1.1 }],
    ['a goal without its proof', { proof: { ...plan.proof, goals: { minutes: plan.proof.goals.minutes } } }],
    ['a rule below nothing', { rules: { ...plan.rules, leastSpellSeconds: -1 } }],
  ])('refuses %s', (_what, change) => {
    expect(matchPlanShape.safeParse({ ...plan, ...change }).success).toBe(false)
  })
})
