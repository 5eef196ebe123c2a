import type { PlannedPlayer, PlanRequest } from '#planning/practice-plan'
import { smallerSide } from '#planning/split-sides'

/**
 * Those who agreed to one side all practice with a side of their own. Where nobody else keeps one, it is the side that
 * begins with what they are owed more of, attacking or defending, so that over some practices both come round. Where
 * there are no bibs, whoever did not agree to it has none.
 */
export function withAgreedSides(request: PlanRequest): PlanRequest {
  const { design, rules } = request
  const sideOf = (player: PlannedPlayer): PlannedPlayer['side'] => {
    if (!player.agreed?.sameSide) return design.sides ? player.side : null
    if (player.side !== null) return player.side
    if (design.sides && rules.keepsSides) return smallerSide(request.players)
    return player.gap.attack <= player.gap.defend ? 0 : 1
  }
  const players = request.players.map((player) => {
    const side = sideOf(player)
    return side === player.side ? player : { ...player, side }
  })
  return players.every((player, index) => player === request.players[index])
    ? request
    : { ...request, players }
}
