import { describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { getClub } from '#data/clubs'
import { getSession } from '#data/sessions'
import { countGoals } from '#server/club-actions'
import { writeGoals } from '#server/session-actions'
import { loadSessionList } from '#server/session-list-views'
import { loadSessionPage } from '#server/session-views'
import { formOfFields } from '../support/form-of-fields'
import { enterSession } from '../support/test-club'
import { type Asker, aClubForWriting, askAs, idle, viewerOf } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
const day = '2026-09-12'
const toCome = '2027-03-06'
const match = (on = day) => enterSession(at.club, { kind: 'match', day: on, title: 'Marl Lane' })
const count = (countsGoals: 'yes' | 'no') => {
  askAs(at.club, 'headCoach')
  return countGoals(idle, formOfFields({ countsGoals }))
}
const end = (sessionId: string, [ours, theirs]: readonly [string, string], who: Asker = 'coach') => {
  askAs(at.club, who)
  return writeGoals(idle, formOfFields({ squadId: at.club.squadId, sessionId, ours, theirs }))
}
const goalsOf = async (sessionId: string) => (await at.club.run((tx) => getSession(tx, sessionId))).goals
const shown = async (sessionId: string) => {
  const coach = await viewerOf(at, 'coach')
  const { held } = await loadSessionList(coach, { squadId: at.club.squadId })
  const page = await loadSessionPage(coach, { squadId: at.club.squadId, sessionId })
  return {
    listed: held.find(({ id }) => id === sessionId)?.goals ?? null,
    onPage: page.countsGoals,
    asked: page.mayWriteGoals,
  }
}

describe('goals of matches', () => {
  it('are not counted unless the club says so, and then nobody is asked for them', async () => {
    const sessionId = await match()
    expect((await at.club.run(getClub)).countsGoals).toBe(false)
    expect(await end(sessionId, ['3', '1'])).toMatchObject({ status: 'refused' })
    expect(await shown(sessionId)).toEqual({ listed: null, onPage: false, asked: false })
  })

  it.each(['coach', 'guardian'] as const)('are not for a %s to switch on', async (who) => {
    askAs(at.club, who)
    expect(await countGoals(idle, formOfFields({ countsGoals: 'yes' }))).toMatchObject({ status: 'refused' })
    expect((await at.club.run(getClub)).countsGoals).toBe(false)
  })

  it('are written, shown, taken out, and hidden again with the switch, each with its row in the record', async () => {
    const sessionId = await match()
    expect(await count('yes')).toMatchObject({ status: 'done' })
    expect(await count('yes')).toMatchObject({ status: 'refused' })
    expect(await end(sessionId, ['3', '1'])).toMatchObject({ status: 'done' })
    expect(await shown(sessionId)).toEqual({ listed: { ours: 3, theirs: 1 }, onPage: true, asked: true })
    await count('no')
    expect(await shown(sessionId)).toEqual({ listed: null, onPage: false, asked: false })
    expect(await goalsOf(sessionId)).toEqual({ ours: 3, theirs: 1 })
    await count('yes')
    expect(await end(sessionId, ['', ''])).toMatchObject({ status: 'done' })
    expect(await goalsOf(sessionId)).toBeNull()
    const deeds = (await at.club.run((tx) => listAudit(tx, { limit: 9 }))).map(({ action }) => action)
    expect(deeds.sort()).toEqual(['countGoals', 'countGoals', 'countGoals', 'writeGoals', 'writeGoals'])
  })

  it.each([
    ['one number without the other', ['3', ''], 'theirs'],
    ['a number below nothing', ['-1', '0'], 'ours'],
    ['half a goal', ['1', '0.5'], 'theirs'],
    ['more than anybody shoots', ['100', '0'], 'ours'],
  ] as const)('%s is refused at its field', async (_what, typed, path) => {
    const sessionId = await match()
    await count('yes')
    expect(await end(sessionId, typed)).toMatchObject({ status: 'refused', problems: [{ path }] })
    expect(await goalsOf(sessionId)).toBeNull()
  })

  it('a practice has none, nor has a match that is to come, nor does another coach write them', async () => {
    await count('yes')
    expect(await end(at.sessionId, ['1', '0'])).toMatchObject({
      problems: [{ message: expect.stringContaining('practice') }],
    })
    expect(await end(await match(toCome), ['1', '0'])).toMatchObject({
      problems: [{ message: expect.stringContaining('to come') }],
    })
    const sessionId = await match()
    expect(await end(sessionId, ['1', '0'], 'otherCoach')).toMatchObject({ status: 'refused' })
    expect(await goalsOf(sessionId)).toBeNull()
  })
})
