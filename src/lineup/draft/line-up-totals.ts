import type { Seconds } from '#common/time'
import { fairLineUp } from '#lineup/fair-line-up'
import type { LineUpPlan } from '#lineup/line-up'
import { secondsOf } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'
import type { PlayerId } from '#squad/player'

/** What a line-up gives one player, beside what is due and what earlier matches leave. */
export type LineUpTotal = {
  readonly playerId: PlayerId
  readonly playSeconds: Seconds
  readonly keepSeconds: Seconds
  readonly starts: boolean
  /** Of this match alone, were everybody due the same. */
  readonly fairSeconds: number
  readonly leastSeconds: Seconds
  /** Played less even share, before the match and after it: negative where time is owed. */
  readonly before: number
  readonly after: number
  /** Comes on, inside periods and at breaks. */
  readonly comesOn: number
}

export function totalsOfLineUp(problem: LineUpProblem, plan: LineUpPlan): readonly LineUpTotal[] {
  const fair = fairLineUp(problem).play
  return problem.players.map(({ id, owed, leastSeconds }, player) => {
    const own = plan[player]
    const playSeconds = secondsOf(problem, own)
    const fairSeconds = fair[player] ?? 0
    return {
      playerId: id,
      playSeconds,
      keepSeconds: secondsOf(problem, own, 'keeper'),
      starts: problem.hasStart && (own?.[0] ?? null) !== null,
      fairSeconds,
      leastSeconds,
      before: -owed.playSeconds,
      after: -owed.playSeconds + playSeconds - fairSeconds,
      comesOn: (own ?? []).filter((place, index) => index > 0 && place !== null && own?.[index - 1] === null)
        .length,
    }
  })
}
