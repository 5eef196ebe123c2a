import 'server-only'
import type { Day } from '#common/time'
import type { LinkKind, ListedLink } from '#data/one-time-links'
import { dayIn } from '#server/today'

/** A link as pages list it. */
export type LinkRow = {
  readonly id: string
  readonly kind: LinkKind
  readonly playerId: string | null
  readonly playerName: string | null
  readonly madeByName: string | null
  readonly madeOn: Day
  readonly state: 'open' | 'used' | 'revoked' | 'over'
  /** The day it was used or taken back, or until which it is good. */
  readonly on: Day
}

export function linkRow(
  link: ListedLink,
  { now, timeZone }: { readonly now: Date; readonly timeZone: string },
): LinkRow {
  const { id, kind, playerId, playerName, madeByName, madeAt, usedAt, revokedAt, expiresAt } = link
  const state = usedAt ? 'used' : revokedAt ? 'revoked' : expiresAt > now ? 'open' : 'over'
  return {
    ...{ id, kind, playerId, playerName, madeByName, state },
    madeOn: dayIn(timeZone, madeAt),
    on: dayIn(timeZone, usedAt ?? revokedAt ?? expiresAt),
  }
}
