import type { PlannedPlayer, PlanRequest } from '#planning/practice-plan'
import type { TurnFrame } from '#planning/turn-frames'

/** Places in the list of players of those who alone may attack and those who alone may defend. */
export type SideLists = { readonly attack: readonly number[]; readonly defend: readonly number[] }

/**
 * Who attacks and who defends in a turn when sides are kept. The first side attacks in the first round; at a round's
 * end they change over where the design says so, and in the second half of a free game always. A neutral player plays
 * for the side with the ball, and never defends. Null: there are no sides, or they are not kept.
 */
export function sideListsOf(request: PlanRequest, frame: TurnFrame): SideLists | null {
  const { sides } = request.design
  if (!sides || !request.rules.keepsSides || request.players.every(({ side }) => side === null)) return null
  const changes = (sides.swap === 'eachRound' ? frame.round : 0) + (frame.half ?? 0)
  const attacking = changes % 2
  const listOf = (isMeant: (player: PlannedPlayer) => boolean) =>
    request.players.flatMap((player, index) => (isMeant(player) ? [index] : []))
  return {
    attack: listOf(({ side }) => side === attacking || side === null),
    defend: listOf(({ side }) => side === 1 - attacking),
  }
}
