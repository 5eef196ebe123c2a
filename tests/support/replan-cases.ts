import { findClash } from '#rotation/clash'
import { noSeconds } from '#rotation/fair-seconds'
import type { RotationPlan } from '#rotation/plan'
import type { RotationPlayer, RotationProblem } from '#rotation/problem'
import { type ReplanWish, usualTries } from '#rotation/replan'
import { replanTail } from '#rotation/replan-tail'
import { randomRotation } from './random-rotation'
import { problemOf } from './rotation-builder'
import { type SeededRandom, seededRandom } from './seeded-random'

export type ReplanCase = ReplanWish & {
  /** As it was before anything happened. */
  readonly asked: RotationProblem
  readonly events: readonly string[]
}

/**
 * A practice that is running, with a plan, and one to three things that happen at a turn: somebody leaves, comes late,
 * comes as a guest, may not keep any more, agrees to few turns. Null: the practice itself is impossible.
 */
export function replanCase(
  seed: number,
  { tries = usualTries, turns }: { readonly tries?: number; readonly turns?: number } = {},
): ReplanCase | null {
  const random = seededRandom(seed * 131 + 7)
  const asked = problemOf(randomRotation(seed, { turns }))
  if (findClash(asked).length > 0) return null
  const before = replanTail(asked, { old: [], seed, tries: 2000 })?.plan
  if (!before) return null
  const fromTurn = random.whole(1, asked.turns.length - 1)
  const events: string[] = []
  let problem = asked
  for (let count = random.whole(1, 3); count > 0; count -= 1) {
    const event = random.pick(happenings)
    const changed = event(problem, fromTurn, random)
    if (changed === null) continue
    events.push(event.name)
    problem = changed
  }
  const called = random.whole(0, 3)
  return { asked, problem, before: knownTo(before, asked), fromTurn, called, seed, tries, events }
}

function knownTo(plan: RotationPlan, problem: RotationProblem): RotationPlan {
  return plan.map((places) => places.slice(0, problem.players.length))
}

type Happening = (problem: RotationProblem, turn: number, random: SeededRandom) => RotationProblem | null

const happenings: readonly Happening[] = [leaves, leaves, leaves, comes, guest, keepsNoMore, agreesToFew]

function change(problem: RotationProblem, player: number, changed: Partial<RotationPlayer>): RotationProblem {
  const players = problem.players.map((own, index) => (index === player ? { ...own, ...changed } : own))
  return { ...problem, players }
}

function leaves(problem: RotationProblem, turn: number, random: SeededRandom): RotationProblem | null {
  const there = [...problem.players.keys()].filter((player) => problem.players[player]?.present[turn])
  if (there.length === 0) return null
  const player = random.pick(there)
  const present = problem.players[player]?.present.map((isThere, at) => isThere && at < turn) ?? []
  return change(problem, player, { present })
}

function comes(problem: RotationProblem, turn: number, random: SeededRandom): RotationProblem | null {
  const missing = [...problem.players.keys()].filter((player) => !problem.players[player]?.present[turn])
  if (missing.length === 0) return null
  const player = random.pick(missing)
  const present = problem.players[player]?.present.map((isThere, at) => isThere || at >= turn) ?? []
  return change(problem, player, { present })
}

function guest(problem: RotationProblem, turn: number): RotationProblem {
  const present = problem.turns.map((_, at) => at >= turn)
  const own = { id: `guest${problem.players.length}`, keeps: true, present, gap: noSeconds }
  return { ...problem, players: [...problem.players, own] }
}

function keepsNoMore(problem: RotationProblem, _turn: number, random: SeededRandom): RotationProblem {
  return change(problem, random.whole(0, problem.players.length - 1), { keeps: false })
}

function agreesToFew(problem: RotationProblem, _turn: number, random: SeededRandom): RotationProblem {
  const mostTurns = random.whole(4, 12)
  const agreed = random.chance(0.5) ? { mostTurns } : { restsAfterTurn: true }
  return change(problem, random.whole(0, problem.players.length - 1), agreed)
}
