import { expect, it, vi } from 'vitest'
import { newId } from '#data/ids'
import { loadMatch } from '#data/written-sessions'
import { checkMatch } from '#match/checks/check-match'
import { writeFromPitch } from '#server/whistle-actions'
import type { MatchEvent } from '#touchline/match-pack'
import { formOfFields } from '../support/form-of-fields'
import { aMatchPlan, planMatch } from '../support/match-pitch'
import { send } from '../support/pitch-club'
import { matchId } from '../support/tapped-match'
import { enterSession } from '../support/test-club'
import { wildTaps } from '../support/wild-taps'
import { aClubForWriting, idle, versionNow } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting({ players: 10 })

/** Taps of the club's own players, and of some whom it does not know; each with an id that no other match has. */
function tapsOf(seed: number): readonly MatchEvent[] {
  const players = new Map(at.club.playerIds.map((id, index) => [matchId(index), id]))
  const ids = new Map<string, string>()
  const idOf = (id: string) => {
    const own = ids.get(id) ?? newId()
    ids.set(id, own)
    return own
  }
  const text = JSON.stringify(wildTaps(seed))
    .replace(/01990000-0000-7000-8000-\d{12}/g, idOf)
    .replace(/00000000-0000-4000-8000-\d{12}/g, (id) => players.get(id) ?? id)
  return JSON.parse(text)
}

it('whatever is tapped is written as a match that can be, or refused in a sentence; twice on the way', async () => {
  const plan = aMatchPlan(at.club.playerIds)
  const done: string[] = []
  for (let seed = 1; seed <= 6; seed += 1) {
    at.sessionId = await enterSession(at.club, { kind: 'match', day: '2026-10-01', title: `${seed}` })
    if (seed % 3 > 0) await planMatch(at.club, at.sessionId, plan)
    const events = tapsOf(seed)
    for (const part of [events.slice(0, 20), events.slice(20)]) {
      expect(await send(at.sessionId, { events: part })).toMatchObject({ status: 200 })
      const place = { squadId: at.club.squadId, sessionId: at.sessionId, version: await versionNow(at) }
      const { status } = await writeFromPitch(idle, formOfFields(place))
      done.push(status)
      const { match } = await at.club.run((tx) => loadMatch(tx, at.sessionId))
      expect(checkMatch(match)).toEqual([])
    }
  }
  expect(new Set(done)).toEqual(new Set(['done', 'refused']))
})
