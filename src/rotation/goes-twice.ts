import { resting, roleOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'

/** Who of a side has more turns than others of it in a round, as when six meet five. Indexes from 0. */
export type GoesTwice = {
  readonly round: number
  readonly role: 'attack' | 'defend'
  /** Turns that the others have. */
  readonly others: number
  readonly players: readonly number[]
}

/**
 * For each round with sides, who goes more often than the others of its side. Only those who are there for the whole
 * round and do not keep goal in it are compared; a side in which all go equally often is not spoken of.
 */
export function goesTwice(problem: RotationProblem, plan: RotationPlan): readonly GoesTwice[] {
  return problem.rounds.flatMap(({ sides }, round) => {
    if (!sides) return []
    const turns = [...problem.turns.keys()].filter((turn) => problem.turns[turn]?.round === round)
    const roles = (player: number) =>
      turns.map((turn) => {
        const place = plan[turn]?.[player] ?? -1
        return place < resting ? 'away' : roleOf(place)
      })
    return (['attack', 'defend'] as const).flatMap((role): GoesTwice[] => {
      const counts = sides[role].flatMap((player) => {
        const own = roles(player)
        if (own.some((other) => other === 'away' || other === 'keep')) return []
        return [{ player, turns: own.filter((other) => other === role).length }]
      })
      const others = Math.min(...counts.map((own) => own.turns))
      const players = counts.filter((own) => own.turns > others).map(({ player }) => player)
      return players.length === 0 ? [] : [{ round, role, others, players }]
    })
  })
}
