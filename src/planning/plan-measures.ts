import type { Seconds } from '#common/time'
import type { PlannedTurn } from '#planning/practice-plan'
import { otherHalf } from '#planning/problem-of-request'
import { turnFrames } from '#planning/turn-frames'
import type { DesignRound } from '#practice/design'
import { away, resting, roleIndexOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'

/** The longest time that a player goes without a place: in turns, and by the clock with the time between turns. */
export type LongestWait = { readonly turns: number; readonly seconds: Seconds }

/**
 * Of each player. Turns of a run are counted as the book does, both halves of a free game as one wait; the clock runs
 * from the end of the last turn with a place, or the player's first there, to the start of the next.
 */
export function longestWaits(
  plan: RotationPlan,
  of: {
    readonly rounds: readonly DesignRound[]
    readonly turns: readonly Pick<PlannedTurn, 'seconds' | 'gapSeconds'>[]
  },
): readonly LongestWait[] {
  const frames = turnFrames(of.rounds)
  const players = plan[0]?.length ?? 0
  return Array.from({ length: players }, (_, player) => {
    const longest = { turns: 0, seconds: 0 }
    const run = { turns: 0, seconds: 0 }
    plan.forEach((places, turn) => {
      const own = of.turns[turn]
      if ((places[player] ?? away) !== resting) {
        run.turns = 0
        run.seconds = 0
        return
      }
      const before = of.turns[turn - 1]
      const wasThere = (plan[turn - 1]?.[player] ?? away) !== away
      if (before && wasThere) run.seconds += before.gapSeconds
      run.seconds += own?.seconds ?? 0
      const isSecondHalf = frames[turn]?.half === 1 && otherHalf(frames, turn) !== null && run.turns > 0
      if (!isSecondHalf) run.turns += 1
      // Until the next turn begins, if the player has a place in it.
      const next = plan[turn + 1]?.[player] ?? away
      const last = next > resting ? (own?.gapSeconds ?? 0) : 0
      longest.turns = Math.max(longest.turns, run.turns)
      longest.seconds = Math.max(longest.seconds, run.seconds + last)
    })
    return longest
  })
}

export type Mixing = {
  /** Pairs who are on one side of one area at least once, of all pairs there are. */
  readonly pairsMet: number
  readonly pairs: number
  /** Most times that any pair is. */
  readonly most: number
}

/** How well team-mates are mixed. */
export function mixingOf(plan: RotationPlan): Mixing {
  const players = plan[0]?.length ?? 0
  const mixing = { pairsMet: 0, pairs: (players * (players - 1)) / 2, most: 0 }
  for (let one = 0; one < players; one += 1)
    for (let other = one + 1; other < players; other += 1) {
      const times = plan.filter((places) => {
        const place = places[one] ?? away
        return place > resting && place === places[other] && roleIndexOf(place) !== 2
      }).length
      if (times > 0) mixing.pairsMet += 1
      mixing.most = Math.max(mixing.most, times)
    }
  return mixing
}
