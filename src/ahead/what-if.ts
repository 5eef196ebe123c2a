import type { AheadRequest, DaySpan } from '#ahead/request'
import type { Day } from '#common/time'
import type { PlayerId } from '#squad/player'

/** The request as if a practice were held on another day: what the coach holds moves with it. */
export function movePractice(
  request: AheadRequest,
  { practiceId, day }: { readonly practiceId: string; readonly day: Day },
): AheadRequest {
  return {
    ...request,
    practices: request.practices.map((own) => (own.id === practiceId ? { ...own, day } : own)),
  }
}

/** The request as if a practice were not held. */
export function dropPractice(request: AheadRequest, practiceId: string): AheadRequest {
  return { ...request, practices: request.practices.filter(({ id }) => id !== practiceId) }
}

/** The request as if a player were away as well on these days. */
export function awayFor(
  request: AheadRequest,
  { playerId, span }: { readonly playerId: PlayerId; readonly span: DaySpan },
): AheadRequest {
  return {
    ...request,
    players: request.players.map((own) =>
      own.id === playerId ? { ...own, away: [...own.away, span] } : own,
    ),
  }
}
