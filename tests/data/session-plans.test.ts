import { beforeAll, describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { findPlan, getPlan, listPlanned, savePlan } from '#data/session-plans'
import { planFaults } from '#planning/plan-faults'
import type { PracticePlan } from '#planning/practice-plan'
import { clubId, personId } from '../../seeds/club'
import { demoId } from '../../seeds/ids'
import { loadDemoBook } from '../support/demo-book'
import { aClub, enterSession } from '../support/test-club'

const planned = ['underTen/practice/2026-06-08', 'underTwelve/practice/2026-06-10'].map(demoId)

describe('plans of practices in the database', () => {
  let plans: readonly PracticePlan[] = []
  beforeAll(async () => {
    await loadDemoBook()
    const stored = await inClub(clubId, (tx) => Promise.all(planned.map((id) => getPlan(tx, id))))
    plans = stored.map(({ plan }) => plan)
  }, 60_000)
  const thePlan = () => plans[0] as PracticePlan

  it('the demo has one for fourteen on the day it stands still, each without a fault', () => {
    expect(plans.map(({ players }) => players.length)).toEqual([14, 16])
    expect(plans.map(planFaults)).toEqual([[], []])
  })

  it('says which sessions have one', async () => {
    const other = demoId('underTen/practice/2026-06-16')
    const found = await inClub(clubId, (tx) => listPlanned(tx, [...planned, other, 'no id']))
    expect([...found].sort()).toEqual([...planned].sort())
  })

  it('replaces a plan as a whole and counts how often', async () => {
    const by = { personId: personId('idris'), at: new Date('2026-06-08T12:00:00.000Z') }
    const changed = { ...thePlan(), rules: { restLimit: 3, isGentle: false, keepsSides: false } }
    const sessionId = planned[0] ?? ''
    await inClub(clubId, (tx) => savePlan(tx, { sessionId, plan: changed, knownVersion: 1, by }))
    const stored = await inClub(clubId, (tx) => getPlan(tx, sessionId))
    expect(stored).toMatchObject({ version: 2, plan: changed, madeById: by.personId, madeAt: by.at })
  })

  it('refuses whoever knew another version, and then keeps what stands', async () => {
    const at = await aClub()
    const sessionId = await enterSession(at)
    const save = (knownVersion: number) =>
      at.run((tx) => savePlan(tx, { sessionId, plan: thePlan(), knownVersion, by: at.coach }))
    await expect(save(1)).rejects.toMatchObject({ code: 'conflict' })
    expect(await at.run((tx) => findPlan(tx, sessionId))).toBeNull()
    // Two who both opened the page before there was a plan.
    const both = await Promise.allSettled([save(0), save(0)])
    expect(both.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected'])
    expect(await at.run((tx) => getPlan(tx, sessionId))).toMatchObject({ version: 1 })
  })

  it('a club sees no plan of another', async () => {
    const at = await aClub()
    expect(await at.run((tx) => findPlan(tx, planned[0] ?? ''))).toBeNull()
    expect(await at.run((tx) => findPlan(tx, newId()))).toBeNull()
  })
})
