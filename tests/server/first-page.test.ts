import { afterEach, describe, expect, it } from 'vitest'
import type { Viewer } from '#access/viewer'
import { recordGuardianships } from '#data/guardianships'
import { recordSquadCoach } from '#data/squad-coaches'
import { findViewer } from '#server/find-viewer'
import { loadFirstPage } from '#server/first-page-views'
import { homeOf } from '#server/home-of'
import { aClub, type TestClub } from '../support/test-club'

const demoMode = process.env.TURNBOOK_DEMO
afterEach(() => {
  if (demoMode === undefined) delete process.env.TURNBOOK_DEMO
  else process.env.TURNBOOK_DEMO = demoMode
})

async function aDemoClub(name: string): Promise<TestClub> {
  const at = await aClub({ isDemo: true, name })
  const line = { kind: 'coach', firstDay: '2020-01-01', lastDay: null } as const
  await at.run(async (tx) => {
    await recordSquadCoach(tx, { squadId: at.squadId, personId: at.coach.personId, ...line })
    await recordGuardianships(tx, [
      { personId: at.guardianId, playerId: at.playerIds[0] ?? '', claimedAt: new Date() },
    ])
  })
  return at
}

describe('the first page', () => {
  it('offers a head coach, a coach and a parent of demo clubs, in demo mode only', async () => {
    const at = await aDemoClub('Foxglove')
    await aClub({ name: 'No demo' })
    process.env.TURNBOOK_DEMO = '1'
    const { demo } = await loadFirstPage(null)
    expect(demo?.map(({ clubName }) => clubName)).toEqual(['Foxglove'])
    expect(demo?.[0]?.main.map(({ role, squadNames }) => [role, squadNames])).toEqual([
      ['headCoach', []],
      ['coach', ['Otters']],
      ['guardian', []],
    ])
    expect(demo?.[0]?.main.every(({ clubId }) => clubId === at.club.id)).toBe(true)
    process.env.TURNBOOK_DEMO = '0'
    expect((await loadFirstPage(null)).demo).toBeNull()
  })

  it('leads everyone to what is theirs', async () => {
    const at = await aDemoClub('Harebell')
    const viewerOf = async (personId: string): Promise<Viewer> => {
      const viewer = await findViewer({ clubId: at.club.id, personId })
      if (!viewer) throw new Error('nobody')
      return viewer
    }
    const [headCoach, coach, guardian] = await Promise.all(
      [at.headCoachId, at.coach.personId, at.guardianId].map(viewerOf),
    )
    if (!headCoach || !coach || !guardian) throw new Error('nobody')
    expect(homeOf(headCoach)).toBe('/review')
    expect(homeOf(coach)).toBe(`/squads/${at.squadId}/today`)
    expect(homeOf(guardian)).toBe(`/family/${at.playerIds[0]}`)
    expect(homeOf({ ...guardian, playerIds: at.playerIds })).toBeNull()
    expect(homeOf({ ...coach, squadIds: [] })).toBeNull()
    expect((await loadFirstPage(guardian)).signedIn).toMatchObject({
      home: `/family/${at.playerIds[0]}`,
      children: [{ id: at.playerIds[0] }],
    })
  })
})
