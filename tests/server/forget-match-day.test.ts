import { beforeEach, describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { findMatchPlan } from '#data/session-plans'
import type { MatchPlan } from '#lineup/match-plan'
import { forgetTodayWhenDue } from '#server/forget-today'
import { writeFromPitch } from '#server/whistle-actions'
import { formOfFields as form } from '../support/form-of-fields'
import { aMatchPlan, planMatch, wholeMatch } from '../support/match-pitch'
import { send } from '../support/pitch-club'
import { enterSession } from '../support/test-club'
import { aClubForWriting, idle, versionNow } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting({ players: 10 })
let plan: MatchPlan
beforeEach(async () => {
  at.sessionId = await enterSession(at.club, { kind: 'match', day: '2026-10-01', periods: null })
  const [one = '', other = '', third = ''] = at.club.playerIds
  // The second of them is not to play at the back yet.
  plan = aMatchPlan(at.club.playerIds, {
    mayMeet: [[one, other]],
    together: [[one, third]],
    locks: [{ playerId: third, start: 0, end: 300, place: 'on' }],
  })
  await planMatch(at.club, at.sessionId, plan)
})

const stored = async () => (await at.club.run((tx) => findMatchPlan(tx, at.sessionId)))?.plan
const isForgotten = (own: MatchPlan | undefined) =>
  own !== undefined &&
  own.together.length + own.locks.length + (own.mayMeet ?? []).length === 0 &&
  !JSON.stringify(own.players).includes('notYet')

describe('what was set for the day of a match', () => {
  it('is gone from its plan once the match is written, and who was to be on when stays', async () => {
    expect(isForgotten(await stored())).toBe(false)
    await send(at.sessionId, { events: wholeMatch(plan) })
    const { squadId } = at.club
    const version = await versionNow(at)
    const answer = await writeFromPitch(idle, form({ squadId, sessionId: at.sessionId, version }))
    expect(answer).toMatchObject({ status: 'done' })
    expect(isForgotten(await stored())).toBe(true)
    expect((await stored())?.spells).toEqual(plan.spells)
  })

  it('is gone after 28 days where nobody wrote the match, and not before', async () => {
    const pass = (today: string) => at.club.run((tx) => forgetTodayWhenDue(tx, { today }))
    await pass('2026-10-28')
    expect(isForgotten(await stored())).toBe(false)
    await pass('2026-10-29')
    expect(isForgotten(await stored())).toBe(true)
    const forgotten = async () =>
      (await at.club.run((tx) => listAudit(tx, { limit: 50 }))).filter(
        ({ action }) => action === 'forgetToday',
      )
    await pass('2026-10-30')
    expect(await forgotten()).toMatchObject([{ detail: { plans: 1, today: '2026-10-29' } }])
  })
})
