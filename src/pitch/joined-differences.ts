import type { PlanDifference } from '#pitch/plan-differences'
import type { PlayerId } from '#squad/player'

/**
 * What was otherwise than planned, with new faces as the players they turned out to be: who was expected and came under
 * another name was neither missing nor a surprise.
 */
export function joinedDifferences(
  differences: readonly PlanDifference[],
  joined: ReadonlyMap<PlayerId, PlayerId>,
): readonly PlanDifference[] {
  const missing = new Set(differences.flatMap((one) => (one.kind === 'missing' ? [one.playerId] : [])))
  const came = new Set(
    differences.flatMap((one) => (one.kind === 'extra' ? [joined.get(one.playerId) ?? one.playerId] : [])),
  )
  return differences.flatMap((one): readonly PlanDifference[] => {
    if (!('playerId' in one)) return [one]
    const playerId = joined.get(one.playerId) ?? one.playerId
    if (one.kind === 'missing' && came.has(playerId)) return []
    if (one.kind === 'extra' && missing.has(playerId)) return []
    return [{ ...one, playerId }]
  })
}
