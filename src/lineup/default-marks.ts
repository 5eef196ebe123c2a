import type { Seconds } from '#common/time'
import type { MatchFormat } from '#match/format/match-format'

/** Our own judgement, common practice, no source: shorter is all changes, longer leaves little to share. */
const shortest: Seconds = 240
const longest: Seconds = 480
const bestLength: Seconds = 300
const mostWindows = 14

/**
 * Seconds inside each period at which changes may be made, to begin with: every four to eight minutes, few in all, and
 * where such a grid lets so many players have exactly the same time, that grid. None where changes wait for breaks.
 */
export function defaultMarks(
  format: Pick<MatchFormat, 'periodSeconds' | 'aSide' | 'changesAtBreaksOnly'>,
  players: number,
): readonly (readonly Seconds[])[] {
  const { periodSeconds, changesAtBreaksOnly } = format
  if (changesAtBreaksOnly || players <= format.aSide) return periodSeconds.map(() => [])
  const period = Math.max(0, ...periodSeconds)
  const most = Math.max(1, Math.floor(mostWindows / Math.max(1, periodSeconds.length)))
  const counts = Array.from({ length: most }, (_, index) => index + 1)
  const best = counts
    .map((count) => ({ count, rank: rankOf(format, { players, period, count }) }))
    .reduce((least, next) => (isLess(next.rank, least.rank) ? next : least))
  return periodSeconds.map((seconds) =>
    marksInside(seconds, Math.max(1, Math.round((best.count * seconds) / period))),
  )
}

/** Less is better: length within its ends first, then exactly equal time, whole minutes, and the length one likes best. */
function rankOf(
  { periodSeconds, aSide }: Pick<MatchFormat, 'periodSeconds' | 'aSide'>,
  asked: { readonly players: number; readonly period: Seconds; readonly count: number },
): readonly number[] {
  const { players, period, count } = asked
  const length = period / count
  const beyond = Math.max(0, shortest - length, length - longest)
  const areAlike = periodSeconds.every((seconds) => seconds === period)
  const isExact = areAlike && period % count === 0 && (aSide * periodSeconds.length * count) % players === 0
  return [beyond, isExact ? 0 : 1, length % 60 === 0 ? 0 : 1, Math.abs(length - bestLength)]
}

function isLess(one: readonly number[], other: readonly number[]): boolean {
  for (const [index, value] of one.entries()) {
    const against = other[index] ?? 0
    if (value !== against) return value < against
  }
  return false
}

function marksInside(seconds: Seconds, count: number): readonly Seconds[] {
  return Array.from({ length: count - 1 }, (_, index) => Math.round(((index + 1) * seconds) / count))
}
