import { describe, expect, it } from 'vitest'
import { listAudit, recordAudit } from '#data/audit'
import { answerReview, listReviews, openReviews } from '#data/reviews'
import { aClub, noon } from '../support/test-club'

describe('term reviews', () => {
  it('are opened once and answered by the squad’s coach', async () => {
    const { run, squadId, termIds, coach, headCoachId } = await aClub()
    const termId = termIds[0]
    const answer = (text: string) =>
      run((tx) => answerReview(tx, { squadId, termId, answer: text, by: coach }))
    expect(await answer('More two against one.')).toEqual({ ok: false, reasons: ['notOpened'] })
    const open = (on: string) =>
      run((tx) => openReviews(tx, { squadIds: [squadId], termId, on, personId: headCoachId }))
    await open('2026-12-10')
    await open('2026-12-20')
    await answer('More two against one.')
    const opened = { squadId, termId, openedOn: '2026-12-10', openedBy: 'Lou Wynd' }
    expect(await run((tx) => listReviews(tx, termId))).toEqual([
      { ...opened, answer: 'More two against one.', answeredBy: 'Kit Vale', answeredAt: noon },
    ])
    await answer('')
    expect(await run((tx) => listReviews(tx, termId))).toEqual([
      { ...opened, answer: '', answeredBy: null, answeredAt: null },
    ])
  })
})

describe('the audit', () => {
  it('tells what was done, newest first, and is gone with a change that was undone', async () => {
    const { run, coach, squadId } = await aClub()
    const deed = {
      action: 'changeSquad',
      objectKind: 'squad',
      objectId: squadId,
      detail: { players: 3 },
    } as const
    await run((tx) => recordAudit(tx, { ...deed, by: coach }))
    const failed = run(async (tx) => {
      await recordAudit(tx, { ...deed, action: 'handOver', by: coach })
      throw new Error('changed its mind')
    })
    await expect(failed).rejects.toThrow('changed its mind')
    await run((tx) =>
      recordAudit(tx, {
        ...deed,
        action: 'changePolicy',
        by: { personId: null, at: new Date('2026-09-02') },
      }),
    )
    expect(await run((tx) => listAudit(tx, { limit: 5 }))).toEqual([
      {
        ...deed,
        id: expect.any(String),
        action: 'changePolicy',
        at: new Date('2026-09-02'),
        personName: null,
      },
      { ...deed, id: expect.any(String), at: noon, personName: 'Kit Vale' },
    ])
  })
})
