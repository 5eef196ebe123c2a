import { roleOf } from '#rotation/place'
import { presentAt, type RotationProblem } from '#rotation/problem'

/** What a proof takes as given besides the rules: places held fast by hand, and a free game dealt beforehand. */
export type ProvenWithin = { readonly heldFast: boolean; readonly freeGame: boolean }

/**
 * What the plans have in common among which one is proven to be the fairest. A free game that is settled counts only
 * where another would have given somebody other minutes: where all attack in one half and defend in the other, none would.
 */
export function provenWithin(problem: RotationProblem): ProvenWithin {
  const fixedIn = problem.turns.map((_, turn) => problem.fixed.filter((own) => own.turn === turn))
  // Nobody holds everyone of a turn fast by hand: such a turn is half of a free game.
  const isSettled = (turn: number) => {
    const fixed = fixedIn[turn] ?? []
    return fixed.length > 0 && fixed.length === presentAt(problem, turn).length
  }
  const isEvenForAll = (turn: number) =>
    (fixedIn[turn] ?? []).every(({ place }) => ['attack', 'defend'].includes(roleOf(place)))
  const turns = [...fixedIn.keys()]
  return {
    heldFast: turns.some((turn) => (fixedIn[turn] ?? []).length > 0 && !isSettled(turn)),
    freeGame: turns.some((turn) => isSettled(turn) && !isEvenForAll(turn)),
  }
}
