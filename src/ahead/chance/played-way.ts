import type { Attendance } from '#ahead/chance/attendances'
import type { Dealer } from '#ahead/chance/dealer'
import { practicePlayer } from '#ahead/chance/practice-player'
import type { PracticeToDeal } from '#ahead/chance/practice-to-deal'
import { copyStanding, standingLike, standingNow } from '#ahead/chance/standing'
import { type WayTally, wayTally } from '#ahead/chance/way-tally'
import type { AheadProblem } from '#ahead/problem'

export type PlayedWay = {
  /** Plays the rest of the term once, and counts who ends inside. */
  readonly play: (attendance: Attendance) => void
  readonly chances: WayTally['chances']
}

/** One way to go on, to be played through as often as wanted. */
export function playedWay(
  problem: AheadProblem,
  { practices, deal }: { readonly practices: readonly (PracticeToDeal | null)[]; readonly deal: Dealer },
): PlayedWay {
  const play = practicePlayer(practices, { playerCount: problem.players.length, deal })
  const now = standingNow(problem)
  const end = standingLike(now)
  const { add, chances } = wayTally(problem)
  return {
    play: ({ came, weight }) => {
      copyStanding({ from: now, to: end })
      practices.forEach((_, at) => {
        play(at, came, end)
      })
      add(end, weight)
    },
    chances,
  }
}
