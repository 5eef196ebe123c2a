import { v7 as uuidv7 } from 'uuid'
import { savePlan } from '#data/session-plans'
import { draftOf } from '#lineup/draft/line-up-draft'
import type { LineUp } from '#lineup/line-up'
import type { MatchPlan } from '#lineup/match-plan'
import { matchPlanOf } from '#lineup/match-plan-of'
import { noWishes } from '#match/format/line-wish'
import type { PlayerId } from '#squad/player'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchEvent } from '#touchline/match-pack'
import { aPickable, matchRequestOf } from './match-request-builder'
import { onByPlan } from './match-spells'
import { phone } from './pitch-club'
import type { TestClub } from './test-club'

/** When the match of the tests is kicked off: 10:00 in Europe/London, on its day. */
export const firstKickOff = Date.UTC(2026, 9, 1, 9, 0, 0)

/** Ten for seven a side, two periods of 25 minutes, everyone promised half; the first is due an hour from before. */
export function aMatchPlan(playerIds: readonly PlayerId[], changes: Partial<MatchPlan> = {}): MatchPlan {
  if (playerIds.length !== 10) throw new Error(`ten, not ${playerIds.length}`)
  const players = playerIds.map((id, index) =>
    aPickable({
      id,
      name: `Player ${index}`,
      owed: { playSeconds: index === 0 ? 3600 : 0, keepSeconds: 0, starts: 0 },
      wishes: { ...noWishes, back: index === 1 ? 'notYet' : 'open' },
    }),
  )
  const request = matchRequestOf(players)
  lineUpOfTen ??= draftOf(request).made
  if (!lineUpOfTen) throw new Error('ten can play seven a side')
  const nameOf = (id: PlayerId) => `Player ${playerIds.indexOf(id)}`
  return { ...matchPlanOf(request, lineUpOfTen, nameOf), ...changes }
}

/** Worked out once: it is by places in the list, whoever the ten are. */
let lineUpOfTen: LineUp | null = null

export async function planMatch(club: TestClub, sessionId: string, plan: MatchPlan): Promise<void> {
  await club.run((tx) => savePlan(tx, { sessionId, plan, knownVersion: 0, by: club.coach }))
}

/** One tap, so many seconds after the first kick-off. */
export function tappedInMatch(
  seconds: number,
  deed: MatchDeed,
  change: Partial<MatchEvent> = {},
): MatchEvent {
  const at = firstKickOff + seconds * 1000
  return { id: uuidv7({ msecs: at }), deviceId: phone, at, deed, ...change }
}

/** Everyone here, two periods of 25 minutes with ten between, all as planned. */
export function wholeMatch(plan: MatchPlan): readonly MatchEvent[] {
  return [
    ...plan.players.map(({ playerId }, index) =>
      tappedInMatch(index - 60, { kind: 'register', playerId, state: 'here' }),
    ),
    tappedInMatch(0, { kind: 'kickOff', period: 0, on: onByPlan(plan, 0) }),
    tappedInMatch(1500, { kind: 'periodEnd', period: 0 }),
    tappedInMatch(2100, { kind: 'kickOff', period: 1, on: onByPlan(plan, 1500) }),
    tappedInMatch(3600, { kind: 'periodEnd', period: 1 }),
    tappedInMatch(3601, { kind: 'fullTime' }),
  ]
}
