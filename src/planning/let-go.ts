import type { PlannedPlayer, PlanRequest } from '#planning/practice-plan'
import { isInSides, keepsOneSide } from '#planning/side-lists'
import type { PlayerId } from '#squad/player'

/** A request with some of what was agreed let go, and with whom that was agreed. */
export type LetGo = { readonly request: PlanRequest; readonly playerIds: readonly PlayerId[] }

/**
 * What was agreed let go step by step, for a plan that cannot be made otherwise: places first, then lone waits, then one
 * side all practice. Only steps that change something. What is due by agreement stays: it stands in nobody's way.
 */
export function agreedLetGo(request: PlanRequest): readonly LetGo[] {
  const steps: LetGo[] = []
  let at: LetGo = { request, playerIds: [] }
  for (const step of [withoutPlaces, withLoneWaits, onBothSides]) {
    const next = step(at.request)
    if (next.playerIds.length === 0) continue
    at = { request: next.request, playerIds: [...new Set([...at.playerIds, ...next.playerIds])] }
    steps.push(at)
  }
  return steps
}

function withoutPlaces(request: PlanRequest): LetGo {
  const held = request.locks.filter(({ agreed }) => agreed)
  const of = request.players.filter(
    ({ playerId, agreed }) =>
      (agreed?.planShownEarly || agreed?.firstPartner) && held.some((lock) => lock.playerId === playerId),
  )
  const locks = request.locks.filter(({ agreed }) => !agreed)
  return { request: { ...request, locks }, playerIds: of.map(({ playerId }) => playerId) }
}

function withLoneWaits(request: PlanRequest): LetGo {
  return changed(
    request,
    ({ agreed }) => agreed?.neverWaitsAlone === true,
    (player) => ({ ...player, agreed: { ...player.agreed, neverWaitsAlone: false } }),
  )
}

function onBothSides(request: PlanRequest): LetGo {
  return changed(
    request,
    (player) => !isInSides(request) && keepsOneSide(player),
    (player) => ({ ...player, agreed: { ...player.agreed, sameSide: false } }),
  )
}

function changed(
  request: PlanRequest,
  isMeant: (player: PlannedPlayer) => boolean,
  change: (player: PlannedPlayer) => PlannedPlayer,
): LetGo {
  return {
    request: { ...request, players: request.players.map((own) => (isMeant(own) ? change(own) : own)) },
    playerIds: request.players.filter(isMeant).map(({ playerId }) => playerId),
  }
}
