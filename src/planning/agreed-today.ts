import type { AgreedToday, PlanRequest } from '#planning/practice-plan'
import type { PlayerId } from '#squad/player'

/** What was agreed with a player and its family and holds on the day of a practice. No reason is known. */
export type PlayerAgreement =
  | { readonly kind: 'fewerTurns'; readonly dueShare: number }
  /** `partnerId` null: nobody was named yet. */
  | { readonly kind: 'sameFirstPartner'; readonly partnerId: PlayerId | null }
  | { readonly kind: 'sameSide' | 'neverWaitsAlone' | 'planShownEarly' }

/**
 * What stands, as a plan has it: kept, unless `before`, which the coach decided for this practice, says otherwise. A
 * first partner who is named stays named. Undefined: nothing is agreed.
 */
export function agreedToday(
  agreements: readonly PlayerAgreement[],
  before: AgreedToday = {},
): AgreedToday | undefined {
  if (agreements.length === 0) return undefined
  return Object.assign({}, ...agreements.map((agreement) => asToday(agreement, before)))
}

function asToday(agreement: PlayerAgreement, before: AgreedToday): AgreedToday {
  switch (agreement.kind) {
    case 'fewerTurns':
      return { dueShare: agreement.dueShare }
    case 'sameFirstPartner':
      return { firstPartner: before.firstPartner === undefined ? agreement.partnerId : before.firstPartner }
    default:
      return { [agreement.kind]: before[agreement.kind] ?? true }
  }
}

/** Whether a plan knows of all that stands, and of nothing else; what of it is let go in this practice is the coach's to say. */
export function knowsAgreed(
  agreed: AgreedToday | undefined,
  agreements: readonly PlayerAgreement[],
): boolean {
  const standing = agreedToday(agreements) ?? {}
  const parts = (one: AgreedToday) => Object.keys(one).sort().join()
  return parts(agreed ?? {}) === parts(standing) && agreed?.dueShare === standing.dueShare
}

/** The request with what stands on the day: what was agreed since is kept, what has ended is gone. */
export function withAgreements(
  request: PlanRequest,
  agreementsOf: (playerId: PlayerId) => readonly PlayerAgreement[],
): PlanRequest {
  const players = request.players.map(({ agreed: before, ...player }) => {
    const agreed = agreedToday(agreementsOf(player.playerId), before)
    return agreed ? { ...player, agreed } : player
  })
  return { ...request, players }
}
