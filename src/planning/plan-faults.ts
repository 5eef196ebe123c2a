import { type SeatFault, timetableOf } from '#planning/planned-turns'
import type { PracticePlan } from '#planning/practice-plan'
import { problemOfRequest, withFreeGames } from '#planning/problem-of-request'
import { turnFrames } from '#planning/turn-frames'
import { checkPlan } from '#rotation/check-plan'
import type { RuleBreak } from '#rotation/rule'
import type { PlayerId } from '#squad/player'

/** Why a plan cannot be played, whoever made it. Turns from 0. */
export type PlanFault =
  | { readonly what: 'noTurns' }
  | { readonly what: 'playerTwice'; readonly playerId: PlayerId }
  | { readonly what: 'presence'; readonly playerId: PlayerId }
  | { readonly what: 'pairOfOne'; readonly playerId: PlayerId }
  | { readonly what: 'otherTurns'; readonly turn: number }
  | ({ readonly what: 'seat' } & SeatFault)
  | { readonly what: 'halves'; readonly turn: number }
  | {
      readonly what: 'rule'
      readonly rule: RuleBreak['rule']
      readonly turn: number
      readonly playerIds: readonly PlayerId[]
    }

/**
 * Everything that is wrong with a plan; none: it may be saved and shown. Trusts nothing in it: its turns must be those of
 * its rounds, filled by who is there, and keep every rule that the plan itself names. The limit on waits is the one that
 * the plan says it keeps, which is never below the one asked for.
 */
export function planFaults(plan: PracticePlan): readonly PlanFault[] {
  const own = [...faultsOfPlayers(plan), ...faultsOfTurns(plan)]
  if (own.length > 0) return own
  const timetable = timetableOf(plan)
  if (!timetable.ok) return timetable.reasons.map((fault) => ({ what: 'seat' as const, ...fault }))
  const { restLimit } = plan.rules
  const used = restLimit === null ? null : Math.max(restLimit, plan.proof.restLimitUsed ?? restLimit)
  const asked = { ...problemOfRequest(plan), restLimit: used }
  const broken = checkPlan(asked, timetable.value)
  if (broken.length > 0) return broken.map((one) => faultOfRule(plan, one))
  const mirrored = withFreeGames(asked, { request: plan, plan: timetable.value })
  return checkPlan(mirrored, timetable.value).map(({ turn }) => ({ what: 'halves' as const, turn }))
}

function faultsOfPlayers({ players, design, apart, together }: PracticePlan): readonly PlanFault[] {
  const count = turnFrames(design.rounds).length
  const ids = players.map(({ playerId }) => playerId)
  const twice = new Set(ids.filter((id, index) => ids.indexOf(id) !== index))
  const badlyThere = players.filter(({ present }) =>
    present.some(([from, to], index) => from > to || to > count || from <= (present[index - 1]?.[1] ?? 0)),
  )
  return [
    ...[...twice].map((playerId) => ({ what: 'playerTwice' as const, playerId })),
    ...badlyThere.map(({ playerId }) => ({ what: 'presence' as const, playerId })),
    ...[...apart, ...together].flatMap(([one, other]) =>
      one === other ? [{ what: 'pairOfOne' as const, playerId: one }] : [],
    ),
  ]
}

function faultsOfTurns({ turns, design }: PracticePlan): readonly PlanFault[] {
  const frames = turnFrames(design.rounds)
  if (frames.length === 0) return [{ what: 'noTurns' }]
  const count = Math.max(frames.length, turns.length)
  return Array.from({ length: count }, (_, turn) => turn).flatMap((turn): PlanFault[] => {
    const [frame, own] = [frames[turn], turns[turn]]
    const isSame =
      frame?.round === own?.round &&
      frame?.seconds === own?.seconds &&
      frame?.gapSeconds === own?.gapSeconds &&
      frame?.stations.length === own?.stations.length
    return isSame ? [] : [{ what: 'otherTurns', turn }]
  })
}

function faultOfRule(plan: PracticePlan, { rule, turn, players }: RuleBreak): PlanFault {
  const playerIds = players.map((player) => plan.players[player]?.playerId ?? '')
  return { what: 'rule', rule, turn, playerIds }
}
