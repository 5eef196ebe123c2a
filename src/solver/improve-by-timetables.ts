import type { RotationPlan } from '#rotation/plan'
import { planValues } from '#rotation/plan-values'
import { type BranchNode, branchesOf } from '#solver/branch-arcs'
import { closedArcs } from '#solver/close-arcs'
import { dive } from '#solver/dive'
import type { Fairest } from '#solver/fairest-plan'
import {
  boundAtCenter,
  type Generated,
  type GenerationLimits,
  generateColumns,
} from '#solver/generate-columns'
import { enterPart, type Generation, openGeneration } from '#solver/generation'
import type { Solver } from '#solver/highs'
import { planOfTimetables } from '#solver/plan-of-timetables'
import { drawTimetables, keepersOf } from '#solver/round-timetables'
import { boardOf, legalPlan, lower, polishMs, type Search } from '#solver/search'
import { timetableRows } from '#solver/timetable-rows'

/** Labels of pricing, and steps of the simplex method in a master, that make one unit of work. */
const labelsPerWork = 4000
const stepsPerWork = 20
const narrowest = 60
const repairTries = 100_000
const triesPerPlace = 600
/** How warm exchanges mend what a dive has left: enough to get out of small hollows, too little to lose its shape. */
const repairHeat = 0.05

/** Plans drawn from the first prices, and from better ones. */
const firstDraws = 10
const laterDraws = 6
/** Dives at the root, as long as they help, before branching begins; and then one at every so many nodes. */
const firstDives = 2
const nodesPerDive = 4
const hair = 1e-6

type State = {
  readonly search: Search
  readonly generation: Generation
  readonly restLimit: number | null
  readonly limits: GenerationLimits
  readonly unitSquared: number
  best: Fairest
}

/**
 * Looks for a fairer plan and a bound by whole timetables of single players: what these can cost together in the
 * relaxed sense is a bound, and very nearly what a plan can reach. Plans are made by keeping one timetable after the
 * other; where bound and value do not meet, the search branches (branch and price: C. Barnhart et al., "Branch-and-price:
 * column generation for solving huge integer programs", Oper. Res. 46 (1998) 316-329).
 */
export function improveByTimetables(
  search: Search,
  solver: Solver,
  known: Fairest,
  asked: { readonly restLimit: number | null; readonly untilMs: number },
): Fairest {
  const { restLimit } = asked
  const rows = timetableRows(search.problem, search.mayTake, restLimit)
  const generation = openGeneration(solver, rows)
  try {
    const limits = limitsOf(search, asked.untilMs)
    const unitSquared = rows.unitSeconds ** 2
    const state: State = { search, generation, restLimit, limits, unitSquared, best: known }
    searchRoot(state)
    return state.best
  } finally {
    generation.master.dispose()
  }
}

function limitsOf({ deadline }: Search, untilMs: number): GenerationLimits {
  let owed = 0
  const leftMs = () => deadline.leftMs() - untilMs
  return {
    leftMs,
    mayGoOn: () => leftMs() > 0 && (deadline.leftWork() ?? 1) > 0,
    onWork: (labels, steps) => {
      owed += labels / labelsPerWork + steps / stepsPerWork
      deadline.spend(Math.floor(owed))
      owed -= Math.floor(owed)
    },
    enough: Number.POSITIVE_INFINITY,
    mostWidth: Number.POSITIVE_INFINITY,
  }
}

function isClosed({ value, bound }: Fairest): boolean {
  return value - bound <= hair * Math.max(1, value)
}

function searchRoot(state: State): void {
  const { generation, limits } = state
  const quick = generateColumns(generation, { ...limits, mostWidth: narrowest })
  raiseBound(state, quick.bound)
  const early = boundAtCenter(generation, limits)
  if (early) raiseBound(state, early.bound)
  drawPlans(state, quick, firstDraws)
  if (isClosed(state.best) || !limits.mayGoOn()) return
  let root = generateColumns(generation, { ...limits, enough: enoughFor(state) })
  raiseBound(state, root.bound)
  for (let dives = 0; dives < firstDives && !isClosed(state.best) && limits.mayGoOn(); dives += 1) {
    const isFairer = drawPlans(state, root, laterDraws)
    if (isClosed(state.best)) break
    if (!diveFrom(state, root) && !isFairer) break
    root = {
      ...root,
      ...generateColumns(generation, { ...limits, mostWidth: narrowest, mostRounds: 3 }),
      proof: root.proof,
      bound: root.bound,
    }
  }
  if (isClosed(state.best) || !limits.mayGoOn() || root.proof === null) return
  const { value } = state.best
  const room = { value: value / state.unitSquared, bound: root.bound }
  enterPart(generation, { closed: closedArcs(generation, root.proof, room), totals: null })
  branch(state, root)
}

/** The bound, in units², that proves the best plan known. */
function enoughFor({ best, unitSquared }: State): number {
  return (best.value - (hair / 2) * Math.max(1, best.value)) / unitSquared
}

function raiseBound(state: State, bound: number): void {
  const { best, unitSquared } = state
  state.best = { ...best, bound: Math.min(best.value, Math.max(best.bound, bound * unitSquared)) }
}

/** One dive, and exchanges for what it leaves. Says whether the plan is fairer than any before. */
function diveFrom(state: State, from: Generated): boolean {
  const { generation, restLimit, limits } = state
  const kept = dive(generation, from, limits)
  return mend(state, kept && planOfTimetables(generation.rows, kept, { restLimit }))
}

/** Plans drawn by how much the master takes of each timetable, mended by exchanges. */
function drawPlans(state: State, from: Generated, count: number): boolean {
  const { search, generation, restLimit, limits } = state
  let isFairer = false
  for (let drawn = 0; drawn < count && !isClosed(state.best) && limits.mayGoOn(); drawn += 1) {
    const timetables = drawTimetables(generation, from, drawn === 0 ? null : search.chance)
    const keepers = timetables && keepersOf(generation, timetables, from)
    if (keepers === null || timetables === null) continue
    isFairer = mend(state, planOfTimetables(generation.rows, timetables, { restLimit, keepers })) || isFairer
  }
  return isFairer
}

/** Mends a plan by exchanges, and takes it when it is fairer than any before. */
function mend(state: State, raw: RotationPlan | null): boolean {
  const { search, restLimit } = state
  if (raw === null) return false
  const board = boardOf(search, raw)
  const isBest = planValues(search.problem, raw).unfairness <= state.best.bound * (1 + hair)
  if (!isBest || legalPlan(search, board, restLimit) === null)
    lower(search, board, {
      goal: 'unfairness',
      restLimit,
      tries: Math.min(repairTries, triesPerPlace * board.players * board.turns),
      heat: repairHeat,
      reserveMs: polishMs,
    })
  const plan = legalPlan(search, board, restLimit)
  if (plan === null) return false
  const value = planValues(search.problem, plan).unfairness
  if (value >= state.best.value - 1e-9) return false
  state.best = { ...state.best, plan, value }
  return true
}

/** Best bound first, a dive now and then, until nothing open can hold a fairer plan or time is up. */
function branch(state: State, root: Generated): void {
  const { generation, limits } = state
  // Nodes that could not be halved though no plan came of them: nothing is known beyond their bound.
  let unresolved = Number.POSITIVE_INFINITY
  const open: BranchNode[] = [{ part: generation.part, bound: root.bound, generated: root }]
  for (let visited = 0; open.length > 0; visited += 1) {
    const least = bestOpen(open)
    const [node] = open.splice(least, 1)
    if (!node) return
    raiseBound(state, Math.min(node.bound, unresolved))
    if (isClosed(state.best) || !limits.mayGoOn()) return
    const halves = branchesOf(generation, node)
    if (halves.length === 0) unresolved = Math.min(unresolved, node.bound)
    for (const part of halves) {
      enterPart(generation, part)
      const enough = enoughFor(state)
      const generated = generateColumns(generation, { ...limits, enough, mostRounds: 60 })
      const bound = Math.max(node.bound, generated.bound)
      // Cut short by the clock: what is known of the parent holds.
      open.push({ part, bound, generated })
      if (bound >= enough) open.pop()
      else if (!limits.mayGoOn()) continue
      else if (isWhole(generated)) drawPlans(state, generated, 1)
      else if (visited % nodesPerDive === 0) lookFromNode(state, generated, visited)
    }
  }
  raiseBound(state, unresolved)
}

/** The node with the least bound; of several the last, which is the deepest, so that a plan comes of it soon. */
function bestOpen(open: readonly BranchNode[]): number {
  return open.reduce((best, { bound }, at) => {
    const least = open[best]?.bound ?? 0
    return bound <= least + hair * Math.max(1, Math.abs(least)) ? at : best
  }, 0)
}

/** Plans from a node: drawn, or by a dive now and then. */
function lookFromNode(state: State, generated: Generated, visited: number): void {
  if (visited % (2 * nodesPerDive) === 0) diveFrom(state, generated)
  else drawPlans(state, generated, laterDraws)
}

function isWhole({ values }: Generated): boolean {
  return values.every((value) => value < 1e-6 || value > 1 - 1e-6)
}
