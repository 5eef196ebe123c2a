import type { SetAsideReason } from '#pitch/set-aside'

/** Why something that was tapped beside a match changes nothing; see `SetAsideReason` for those of practices too. */
export type MatchSetAsideReason =
  | SetAsideReason
  /** The other phone had tapped the same change. */
  | 'sameChange'
  /** The change that it calls off is not in the plan, or was made. */
  | 'unknownChange'
  /** No period was running. */
  | 'notRunning'

export type MatchSetAside = { readonly id: string; readonly why: MatchSetAsideReason }
