import { playingSecond } from '#lineup/draft/playing-second'
import type { MatchPlanPlayer } from '#lineup/match-plan'
import type { MatchFormat } from '#match/format/match-format'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

/** For which part of the match the register so far has a player there and playing; null: for none of it. */
export function thereByRegister(
  register: readonly RegisterLine[],
  of: {
    readonly playerId: PlayerId
    readonly format: Pick<MatchFormat, 'periodSeconds' | 'breakSeconds'>
  },
): Pick<MatchPlanPlayer, 'from' | 'to'> | null {
  const own = register.filter(({ playerId, state }) => playerId === of.playerId && state === 'here')
  if (own.length === 0) return null
  const whole = of.format.periodSeconds.reduce((sum, seconds) => sum + seconds, 0)
  const from = playingSecond(of.format, Math.min(...own.map((line) => line.from)))
  const to = playingSecond(of.format, Math.max(...own.map((line) => line.to)))
  return from < to ? { from, to: to >= whole ? null : to } : null
}
