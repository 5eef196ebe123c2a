import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

/**
 * Who was out for today in the register that stands and is not, or for less of the session, in the one that would
 * replace it. Out for today is for any knock to the head; nothing but a person's second answer takes it back.
 */
export function takenBackFromOut(
  before: readonly RegisterLine[],
  after: readonly RegisterLine[],
): readonly PlayerId[] {
  const outFrom = (lines: readonly RegisterLine[], playerId: PlayerId) =>
    Math.min(
      Number.POSITIVE_INFINITY,
      ...lines.filter((line) => line.playerId === playerId && line.state === 'out').map((line) => line.from),
    )
  const plays = (playerId: PlayerId, from: number) =>
    after.some((line) => line.playerId === playerId && line.state !== 'out' && line.to > from)
  const wereOut = new Set(before.filter((line) => line.state === 'out').map((line) => line.playerId))
  return [...wereOut].filter(
    (playerId) =>
      outFrom(after, playerId) > outFrom(before, playerId) || plays(playerId, outFrom(before, playerId)),
  )
}
