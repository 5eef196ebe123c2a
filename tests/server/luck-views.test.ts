import { beforeAll, describe, expect, it } from 'vitest'
import type { Viewer } from '#access/viewer'
import { listAccounts } from '#data/accounts'
import { inClub } from '#data/in-club'
import { type LuckBook, loadLuck } from '#server/luck-views'
import { openReviewOf } from '#server/review-deeds'
import { loadReview } from '#server/review-views'
import { autumnId, calendarDay, clubId, demoSquads, springId } from '../../seeds/club'
import { loadDemoBook } from '../support/demo-book'
import { demoViewer } from '../support/demo-viewer'

const { underTen, underTwelve } = demoSquads
let coach: Viewer
let headCoach: Viewer
let luck: LuckBook

beforeAll(async () => {
  await loadDemoBook()
  coach = await demoViewer('idris')
  headCoach = await demoViewer('maren')
  luck = await loadLuck(coach, { squadId: underTen.id, query: {} })
}, 60_000)

const notAllowed = { code: 'notAllowed' }

describe('luck or habit of a squad’s term', () => {
  it('rests on turns written as they happened, as the accounts count them', async () => {
    const accounts = await inClub(clubId, (tx) =>
      listAccounts(tx, { squadId: underTen.id, from: '2026-01-01', to: calendarDay, kinds: ['practice'] }),
    )
    const happened = accounts.filter(({ written }) => written === 'tapped' || written === 'roundByRound')
    expect(luck.term?.id).toBe(springId)
    expect(luck.luck.practices).toBe(happened.length)
    expect(luck.luck.turns).toBeGreaterThan(100)
    expect(luck.luck.squad?.pValue).toBeGreaterThan(0)
    expect(luck.luck.squad?.pValue).toBeLessThanOrEqual(1)
  })

  it('says of each player no more turns than the accounts hold of it', async () => {
    const accounts = await inClub(clubId, (tx) =>
      listAccounts(tx, { squadId: underTen.id, from: '2026-01-01', to: calendarDay, kinds: ['practice'] }),
    )
    const names = new Set(luck.players.map(({ id }) => id))
    expect(luck.luck.players?.length).toBeGreaterThan(0)
    for (const { playerId, role, turns } of luck.luck.players ?? []) {
      expect(names.has(playerId)).toBe(true)
      const held = accounts.flatMap(({ lines }) =>
        lines.filter((line) => line.playerId === playerId && line.role === role),
      )
      expect(turns).toBeLessThanOrEqual(held.reduce((sum, line) => sum + line.turns, 0))
    }
  })

  it('says the same again', async () => {
    expect((await loadLuck(coach, { squadId: underTen.id, query: {} })).luck).toEqual(luck.luck)
  })

  it('is nobody’s but the coach’s of the squad', async () => {
    for (const key of ['odile', 'maren', 'samir', 'tobiah', 'chinwe'] as const)
      await expect(
        loadLuck(await demoViewer(key), { squadId: underTen.id, query: {} }),
        key,
      ).rejects.toMatchObject(notAllowed)
    await expect(loadLuck(coach, { squadId: underTwelve.id, query: {} })).rejects.toMatchObject(notAllowed)
  })

  it('is the head coach’s, and not the administrator’s, once the days to answer are over', async () => {
    const administrator = await demoViewer('odile')
    const onReview = async (viewer: Viewer, term: string) =>
      (await loadReview(viewer, { query: { term } })).squads.find(({ squad }) => squad.id === underTen.id)
        ?.luck
    // The review of autumn is final since January.
    const autumn = { squadId: underTen.id, query: { term: autumnId } }
    expect(await onReview(headCoach, autumnId)).toBe('open')
    const read = await loadLuck(headCoach, autumn)
    expect(read.term?.id).toBe(autumnId)
    // No link to a term that it may not read yet.
    expect(read.terms.map(({ id }) => id)).toEqual([autumnId])
    expect(luck.terms.map(({ id }) => id)).toEqual([autumnId, springId])
    expect(await onReview(administrator, autumnId)).toBeNull()
    await expect(loadLuck(administrator, autumn)).rejects.toMatchObject(notAllowed)

    expect((await openReviewOf(headCoach, { termId: springId })).ok).toBe(true)
    const spring = { squadId: underTen.id, query: { term: springId } }
    expect(await onReview(headCoach, springId)).toEqual({ from: '2026-06-15' })
    await expect(loadLuck(headCoach, spring)).rejects.toMatchObject(notAllowed)
    expect(await onReview(coach, springId)).toBe('open')
  })
})
