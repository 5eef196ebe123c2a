import { beforeEach, describe, expect, it, vi } from 'vitest'
import { listAccounts } from '#data/accounts'
import { listSpells } from '#data/match-spells'
import { getSession } from '#data/sessions'
import { listCorrectedSpells } from '#data/written-history'
import { writeMatch } from '#server/session-actions'
import { enterSession } from '../support/test-club'
import { formOf, typedMatch } from '../support/typed-session'
import { aClubForWriting, askAs, idle, versionNow } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

describe('writing a match', () => {
  beforeEach(async () => {
    at.sessionId = await enterSession(at.club, { kind: 'match', day: '2026-09-12', periods: null })
  })
  const matchLines = ['K K K', 'B B M', 'F O F', 'M F .', '. M B']
  const writeIt = async (typed = matchLines) =>
    writeMatch(
      idle,
      formOf(typedMatch(at.club, typed, { sessionId: at.sessionId, version: await versionNow(at) })),
    )

  it('writes periods, register and spells, and their account', async () => {
    expect(await writeIt()).toMatchObject({ status: 'done' })
    const spells = await at.club.run((tx) => listSpells(tx, at.sessionId))
    const bo = spells.filter(({ playerId }) => playerId === at.club.playerIds[1])
    expect(bo.map(({ line, start, end }) => [line, start, end])).toEqual([
      ['back', 0, 1200],
      ['middle', 1500, 2700],
    ])
    expect(await at.club.run((tx) => getSession(tx, at.sessionId))).toMatchObject({
      written: 'typedLater',
      periods: [
        { start: 0, end: 1200 },
        { start: 1500, end: 2700 },
      ],
    })
    const days = { squadId: at.club.squadId, from: '2026-09-12', to: '2026-09-12' }
    const [account] = await at.club.run((tx) => listAccounts(tx, days))
    expect(account).toMatchObject({ kind: 'match', liveSeconds: 2400 })
  })

  it('a correction voids the spells of whom it changes, and theirs only', async () => {
    await writeIt()
    expect(await writeIt(['K K K', 'B B B', 'F O F', 'M F .', '. M B'])).toMatchObject({ status: 'done' })
    const corrected = await at.club.run((tx) => listCorrectedSpells(tx, at.sessionId))
    expect(new Set(corrected.map(({ value }) => value.playerId))).toEqual(new Set([at.club.playerIds[1]]))
    const bo = (await at.club.run((tx) => listSpells(tx, at.sessionId))).filter(
      ({ playerId }) => playerId === at.club.playerIds[1],
    )
    expect(bo.map(({ line }) => line)).toEqual(['back', 'back'])
  })

  it.each(['otherCoach', 'guardian'] as const)('is refused to a %s', async (person) => {
    askAs(at.club, person)
    expect(await writeIt()).toMatchObject({ status: 'refused' })
    expect(await at.club.run((tx) => listSpells(tx, at.sessionId))).toEqual([])
  })
})
