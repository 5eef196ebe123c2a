import { InvariantError } from '#common/result'
import { type Role, roles } from '#exposure/column'
import type { TallyRow } from '#exposure/column-tally'
import type { Got } from '#exposure/exposures'
import { type Span, spanLength } from '#exposure/span'
import type { PlayerId } from '#squad/player'

// Splits of whole seconds are the only fractions, so anything beyond this is not rounding.
const noise = 1e-9

/**
 * Checks that the books balance. For every player attack + defend + keep + rest = live time present; for every role
 * what the players got = seats × length.
 * @throws InvariantError with the player or role and both numbers, as when a player sits twice or sits while away.
 */
export function checkBooks(
  spans: readonly Span[],
  exposures: readonly TallyRow<Got>[],
  rules: { readonly middleAttackShare: number },
): void {
  const live = livePresent(spans)
  const booked = new Map<PlayerId, number>()
  for (const { playerId, sums } of exposures) booked.set(playerId, (booked.get(playerId) ?? 0) + sums.seconds)
  for (const playerId of new Set([...live.keys(), ...booked.keys()])) {
    const liveSeconds = live.get(playerId) ?? 0
    const bookedSeconds = booked.get(playerId) ?? 0
    if (differ(liveSeconds, bookedSeconds)) {
      throw new InvariantError('The book of a player does not balance.', {
        playerId,
        liveSeconds,
        bookedSeconds,
      })
    }
  }
  const open = seatSeconds(spans, rules.middleAttackShare)
  for (const role of roles) {
    const got = exposures.filter((e) => e.column.role === role).reduce((sum, e) => sum + e.sums.seconds, 0)
    if (differ(open[role], got)) {
      throw new InvariantError('The book of a role does not balance.', { role, seatSeconds: open[role], got })
    }
  }
}

/** Live seconds that each player was present for. */
export function livePresent(spans: readonly Span[]): ReadonlyMap<PlayerId, number> {
  const live = new Map<PlayerId, number>()
  for (const span of spans) {
    for (const playerId of span.present) live.set(playerId, (live.get(playerId) ?? 0) + spanLength(span))
  }
  return live
}

function seatSeconds(spans: readonly Span[], middleAttackShare: number): Record<Role, number> {
  const sums = { attack: 0, defend: 0, keep: 0, rest: 0 }
  for (const span of spans) {
    const seated = (role: string) =>
      span.seats.filter((s) => s.column.role === role).reduce((sum, s) => sum + s.playerIds.length, 0)
    const length = spanLength(span)
    const middle = seated('middle')
    sums.attack += length * (seated('attack') + middle * middleAttackShare)
    sums.defend += length * (seated('defend') + middle * (1 - middleAttackShare))
    sums.keep += length * seated('keep')
    sums.rest += length * (span.present.length - span.seats.reduce((sum, s) => sum + s.playerIds.length, 0))
  }
  return sums
}

function differ(a: number, b: number): boolean {
  return Math.abs(a - b) > noise * Math.max(1, Math.abs(a), Math.abs(b))
}
