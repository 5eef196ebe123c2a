import type { PlannedPlayer, PlanRequest } from '#planning/practice-plan'
import type { TurnFrame } from '#planning/turn-frames'

/** Places in the list of players of those who alone may attack and those who alone may defend. */
export type SideLists = { readonly attack: readonly number[]; readonly defend: readonly number[] }

/** Whether everyone keeps to one of two sides. */
export function isInSides({
  design,
  rules,
  players,
}: Pick<PlanRequest, 'design' | 'rules' | 'players'>): boolean {
  return design.sides !== null && rules.keepsSides && players.some(({ side }) => side !== null)
}

/** Whether a player keeps one side in this practice, whatever the others do. */
export function keepsOneSide({ side, agreed }: Pick<PlannedPlayer, 'side' | 'agreed'>): boolean {
  return side !== null && agreed?.sameSide === true
}

/**
 * Who attacks and who defends in a turn when sides are kept. The first side attacks in the first round; at a round's
 * end they change over where the design says so, and in the second half of a free game always. A neutral player plays
 * for the side with the ball, and never defends. Where sides are not kept by all, or there are none, those who agreed to
 * one have theirs all the same, and the others play for either. Null: nobody keeps a side.
 */
export function sideListsOf(request: PlanRequest, frame: TurnFrame): SideLists | null {
  const { sides } = request.design
  const areAll = isInSides(request)
  if (!areAll && !request.players.some(keepsOneSide)) return null
  const changes = (sides?.swap === 'eachRound' ? frame.round : 0) + (frame.half ?? 0)
  const attacking = changes % 2
  const listOf = (isMeant: (player: PlannedPlayer) => boolean) =>
    request.players.flatMap((player, index) => (isMeant(player) ? [index] : []))
  if (areAll)
    return {
      attack: listOf(({ side }) => side === attacking || side === null),
      defend: listOf(({ side }) => side === 1 - attacking),
    }
  return {
    attack: listOf((player) => !keepsOneSide(player) || player.side === attacking),
    defend: listOf((player) => !keepsOneSide(player) || player.side !== attacking),
  }
}
