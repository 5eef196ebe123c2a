import { resting } from '#rotation/place'
import type { RotationProblem } from '#rotation/problem'

/** Keeps count, turn after turn, of what players have had against what they agreed to. */
export class OwnLimits {
  readonly #had: number[]
  readonly #isOn: boolean[]

  /** `duties`: turn by turn, who keeps goal whatever comes; these turns count from the beginning. */
  constructor(
    readonly problem: RotationProblem,
    readonly duties: readonly ReadonlyMap<number, number>[],
  ) {
    this.#had = problem.players.map((_, player) => duties.filter((own) => own.has(player)).length)
    this.#isOn = problem.players.map(() => false)
  }

  /** By how many turns a place now would go beyond the player's own limits: 0 is within. */
  excess(player: number): number {
    const own = this.problem.players[player]
    if (own?.mostTurns == null && !own?.restsAfterTurn) return 0
    const beyond = own.mostTurns == null ? 0 : Math.max(0, (this.#had[player] ?? 0) + 1 - own.mostTurns)
    return beyond + (own.restsAfterTurn && this.#isOn[player] ? 1 : 0)
  }

  /** Books the place that the player has in a turn. */
  book(turn: number, player: number, place: number): void {
    this.#isOn[player] = place > resting
    if (place > resting && !this.duties[turn]?.has(player)) this.#had[player] = (this.#had[player] ?? 0) + 1
  }
}
