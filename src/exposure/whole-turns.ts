import type { SeatColumn, Span } from '#exposure/span'
import type { PlayerId } from '#squad/player'

/**
 * Spans by the turn they are parts of, in their order. A part goes on with the turn before it only where it begins as
 * that one ends: one whose first part was corrected away is a turn of its own. Every span of a match is by itself.
 */
export function wholeTurns<Of extends Pick<Span, 'start' | 'end'> & { readonly continuesTurn?: boolean }>(
  spans: readonly Of[],
): readonly (readonly [Of, ...Of[]])[] {
  const whole: [Of, ...Of[]][] = []
  for (const span of spans) {
    const last = whole.at(-1)
    if (last && span.continuesTurn && last.at(-1)?.end === span.start) last.push(span)
    else whole.push([span])
  }
  return whole
}

/** Whether a part of a turn counts as a turn for a player in it, in a kind of seat or waiting. */
export type TurnCount = (at: {
  readonly part: number
  readonly playerId: PlayerId
  readonly role: SeatColumn['role'] | 'rest'
}) => 0 | 1

/**
 * Counts a turn once for each role that a player had in it, in the part where it first had that role; and as a wait only
 * for whoever had no place in any part. Match time counts no turns.
 */
export function turnCount(whole: readonly Span[]): TurnCount {
  const [only] = whole
  if (whole.length === 1 && only) return () => only.turnCount
  const firstPart = new Map<string, number>()
  const played = new Set<PlayerId>()
  whole.forEach((span, part) => {
    const note = (playerId: PlayerId, role: string) => {
      const key = `${role} ${playerId}`
      if (!firstPart.has(key)) firstPart.set(key, part)
    }
    for (const { column, playerIds } of span.seats) {
      for (const playerId of playerIds) {
        played.add(playerId)
        note(playerId, column.role)
      }
    }
    for (const playerId of span.resting) note(playerId, 'rest')
  })
  return ({ part, playerId, role }) => {
    if (role === 'rest' && played.has(playerId)) return 0
    return firstPart.get(`${role} ${playerId}`) === part ? (whole[part]?.turnCount ?? 0) : 0
  }
}
