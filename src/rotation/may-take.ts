import { resting, roleOf } from '#rotation/place'
import { type RotationProblem, restsAlone } from '#rotation/problem'

/**
 * Whether a player may have a place in a turn by the rules that look at one player and one turn alone: presence,
 * keepers, sides, fixed, no turns at all, and never the only one who rests. Prepared once, as it is asked very often.
 */
export type MayTake = (turn: number, player: number, place: number) => boolean

export function mayTakeIn(problem: RotationProblem): MayTake {
  const fixed = problem.turns.map(() => new Map<number, number>())
  for (const { turn, player, place } of problem.fixed) fixed[turn]?.set(player, place)
  const sides = problem.rounds.map((round) =>
    round.sides === null
      ? null
      : { attack: new Set(round.sides.attack), defend: new Set(round.sides.defend) },
  )
  const isLonely = problem.turns.map((_, turn) => restsAlone(problem, turn))
  return (turn, player, place) => {
    const own = problem.players[player]
    if (!own?.present[turn]) return false
    const fixedPlace = fixed[turn]?.get(player)
    if (fixedPlace !== undefined && fixedPlace !== place) return false
    if (place === resting) return !(own.neverRestsAlone && isLonely[turn])
    if (own.mostTurns === 0) return false
    const role = roleOf(place)
    if (role === 'keep') return own.keeps
    const side = sides[problem.turns[turn]?.round ?? -1]
    return !side || role === 'rest' || side[role].has(player)
  }
}
