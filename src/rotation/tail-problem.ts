import { keeperChains, staysUntil } from '#rotation/keeper-chains'
import { mayServe } from '#rotation/limits'
import { away, resting } from '#rotation/place'
import { type RotationPlan, restAtEnd } from '#rotation/plan'
import { playerFigures } from '#rotation/plan-values'
import type { FixedPlace, RotationPlayer, RotationProblem } from '#rotation/problem'

/**
 * What is left of a practice from a turn on, as a request of its own. It carries all that the turns before mean for it:
 * gaps, waits, turns had, keepers who stay through a round that is running, waits due after a turn. A plan of it leaves
 * the same gaps afterwards as that plan behind the turns played. Rounds keep their numbers.
 */
export function tailProblem(problem: RotationProblem, plan: RotationPlan, from: number): RotationProblem {
  if (from === 0) return problem
  const played = plan.slice(0, from)
  const head: RotationProblem = { ...problem, turns: problem.turns.slice(0, from) }
  const figures = playerFigures(head, played)
  const players = problem.players.map((own, player): RotationPlayer => {
    const { mostTurns, restedBefore = 0 } = own
    const had = played.filter((places) => (places[player] ?? away) > resting).length
    return {
      ...own,
      present: own.present.slice(from),
      gap: figures[player]?.gapAfter ?? own.gap,
      restedBefore: restAtEnd(played, player, restedBefore),
      ...(mostTurns == null ? {} : { mostTurns: Math.max(0, mostTurns - had) }),
    }
  })
  const kept = keptOn(problem, { played, from, left: players })
  const held = [...kept, ...waitsDue(problem, played, from)]
  const isHeld = (fixed: FixedPlace) =>
    held.some(({ turn, player }) => turn === fixed.turn && player === fixed.player)
  const fixed = problem.fixed
    .filter(({ turn, player }) => turn >= from && problem.players[player]?.present[turn])
    .map((own) => ({ ...own, turn: own.turn - from }))
  return {
    ...problem,
    players,
    turns: problem.turns.slice(from),
    fixed: [...fixed.filter((own) => !isHeld(own)), ...held],
  }
}

/** The plan of a whole practice: turns that stand, then those of the rest. */
export function withTail(plan: RotationPlan, from: number, tail: RotationPlan): RotationPlan {
  return [...plan.slice(0, from), ...tail]
}

/** Keepers who stay, in the turns that are left of the round that is running. */
function keptOn(
  problem: RotationProblem,
  { played, from, left }: { readonly played: RotationPlan; readonly from: number; readonly left: Left },
): readonly FixedPlace[] {
  return keeperChains(problem).flatMap((chain) => {
    const step = chain.turns.findIndex((turn) => turn >= from)
    const last = chain.turns[step - 1]
    if (step < 1 || last === undefined) return []
    const player = played[last]?.indexOf(chain.place) ?? -1
    const turns = chain.turns.slice(step, staysUntil(problem, chain, { player, from: step }))
    return mayKeepOn(left[player], [last, ...turns])
      ? turns.map((turn) => ({ turn: turn - from, player, place: chain.place }))
      : []
  })
}

/** Players with what their limits leave them from the turn on. */
type Left = readonly RotationPlayer[]

/** Who may keep no more, or agreed to fewer turns meanwhile, has gone as far as the goal is concerned. */
function mayKeepOn(own: RotationPlayer | undefined, turns: readonly number[]): boolean {
  if (!own?.keeps || !mayServe(own, turns.slice(1))) return false
  return mayServe({ ...own, mostTurns: null }, turns)
}

function waitsDue(problem: RotationProblem, played: RotationPlan, from: number): readonly FixedPlace[] {
  return problem.players.flatMap(({ restsAfterTurn, present }, player) =>
    restsAfterTurn && present[from] && (played[from - 1]?.[player] ?? away) > resting
      ? [{ turn: 0, player, place: resting }]
      : [],
  )
}
