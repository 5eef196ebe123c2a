import type { Seconds } from '#common/time'
import type { MatchFormat } from '#match/format/match-format'

/** Playing time at a second of the match, which counts breaks: what falls into a break is the end of the period before. */
export function playingSecond(
  { periodSeconds, breakSeconds }: Pick<MatchFormat, 'periodSeconds' | 'breakSeconds'>,
  matchSecond: Seconds,
): Seconds {
  let left = Math.max(0, matchSecond)
  let played = 0
  for (const seconds of periodSeconds) {
    if (left <= seconds) return played + left
    played += seconds
    left = Math.max(0, left - seconds - breakSeconds)
  }
  return played
}
