import { beforeAll, describe, expect, it } from 'vitest'
import { firmPractices, type TermPlan } from '#ahead/term-plan'
import { newId } from '#data/ids'
import { findTermPlan, saveTermPlan } from '#data/term-plans'
import { aClub, ownerDatabase, type TestClub } from '../support/test-club'

describe('plans of terms in the database', () => {
  let at: TestClub
  beforeAll(async () => {
    at = await aClub()
  })
  const here = () => ({ squadId: at.squadId, termId: at.termIds[0] })
  const find = (place = here()) => at.run((tx) => findTermPlan(tx, place))
  const save = (knownVersion: number, plan: TermPlan, place = here()) =>
    at.run((tx) => saveTermPlan(tx, { ...place, plan, knownVersion, by: at.coach }))
  const aPlan = (asOf: string | null): TermPlan => ({
    practices: Array.from({ length: firmPractices + 1 }, (_, index) => ({
      sessionId: newId(),
      themeId: at.themeIds[0],
      designId: newId(),
      isHeld: index === 0,
    })),
    asOf,
  })

  it('is kept whole, with who made it; none stands before', async () => {
    expect(await find()).toBeNull()
    const plan = aPlan('2026-09-01')
    expect(await save(0, plan)).toBe(1)
    expect(await find()).toEqual({
      version: 1,
      plan,
      madeById: at.coach.personId,
      madeAt: at.coach.at,
    })
  })

  it('is replaced only by whoever knew the one that stood', async () => {
    const before = await find()
    await expect(save(0, aPlan(null))).rejects.toMatchObject({ code: 'conflict' })
    expect(await find()).toEqual(before)
    const both = await Promise.allSettled([save(1, aPlan(null)), save(1, aPlan(null))])
    expect(both.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected'])
    expect(await find()).toMatchObject({ version: 2, plan: { asOf: null } })
  })

  it('belongs to a squad and a term that are there', async () => {
    for (const squadId of [newId(), 'no id'])
      await expect(save(0, aPlan(null), { ...here(), squadId })).rejects.toMatchObject({ code: 'notFound' })
    for (const termId of [newId(), 'no id'])
      await expect(save(0, aPlan(null), { ...here(), termId })).rejects.toMatchObject({ code: 'notFound' })
    expect(await find({ ...here(), squadId: 'no id' })).toBeNull()
    expect(await find({ ...here(), termId: at.termIds[1] })).toBeNull()
  })

  it('is not seen by another club', async () => {
    const other = await aClub()
    expect(await other.run((tx) => findTermPlan(tx, here()))).toBeNull()
    const taken = other.run((tx) =>
      saveTermPlan(tx, { ...here(), plan: aPlan(null), knownVersion: 0, by: other.coach }),
    )
    await expect(taken).rejects.toMatchObject({ code: 'notFound' })
  })

  it('a row that is no plan is refused when it is read', async () => {
    const place = { squadId: at.squadId, termId: at.termIds[1] }
    await save(0, aPlan(null), place)
    const twice = aPlan(null).practices[0]
    await ownerDatabase().$executeRaw`
      update "TermPlan" set plan = ${JSON.stringify({ practices: [twice, twice], asOf: null })}::jsonb
      where "termId" = ${place.termId}::uuid`
    await expect(find(place)).rejects.toThrow('each practice once')
  })
})
