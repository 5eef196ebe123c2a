import { type Draw, goalTurns, keepChance, luckRoles, openPlaces } from '#fairness/luck/draw'

/** Of a player and role (player × 4 + role): turns it had, what a fair draw gives on average, and the variance of that. */
export type DrawMoments = {
  readonly had: Float64Array
  readonly mean: Float64Array
  readonly variance: Float64Array
}

const keep = luckRoles.indexOf('keep')

/** What every player had of each role, and what a fair draw would give: in closed form, no chance in it. */
export function drawMoments(draw: Draw): DrawMoments {
  const size = draw.players.length * luckRoles.length
  const [had, mean, variance] = [new Float64Array(size), new Float64Array(size), new Float64Array(size)]
  const add = (into: Float64Array, at: number, what: number) => {
    into[at] = (into[at] ?? 0) + what
  }
  for (const block of draw.blocks) {
    const sums = new Map<number, { mean: number[]; variance: number[] }>()
    let kept = 0
    for (const turn of block.turns) {
      const open = openPlaces(block, turn)
      kept += goalTurns(turn)
      const means = luckRoles.map((_, role) => average(open.map((place) => place[role] ?? 0)))
      const spreads = luckRoles.map(
        (_, role) => average(open.map((place) => (place[role] ?? 0) ** 2)) - (means[role] ?? 0) ** 2,
      )
      turn.players.forEach((player, at) => {
        const own = sums.get(player) ?? { mean: [0, 0, 0, 0], variance: [0, 0, 0, 0] }
        sums.set(player, own)
        luckRoles.forEach((_, role) => {
          own.mean[role] = (own.mean[role] ?? 0) + (means[role] ?? 0)
          own.variance[role] = (own.variance[role] ?? 0) + (spreads[role] ?? 0)
          add(had, player * luckRoles.length + role, turn.places[at]?.[role] ?? 0)
        })
      })
    }
    for (const [player, own] of sums) {
      const goal = keepChance(block, player)
      luckRoles.forEach((_, role) => {
        const at = player * luckRoles.length + role
        const sum = role === keep ? kept : (own.mean[role] ?? 0)
        const part = role === keep ? goal : 1 - goal
        add(mean, at, part * sum)
        // In goal or not is drawn once for the block, places of the others turn by turn.
        add(
          variance,
          at,
          goal * (1 - goal) * sum ** 2 + (role === keep ? 0 : part * (own.variance[role] ?? 0)),
        )
      })
    }
  }
  return { had, mean, variance }
}

const average = (numbers: readonly number[]) =>
  numbers.length === 0 ? 0 : numbers.reduce((all, one) => all + one, 0) / numbers.length
