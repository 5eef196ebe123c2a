import { secondsBeyond } from '#ahead/chance/is-inside'
import { checkAhead } from '#ahead/check-ahead'
import type { Reach, ReachOfPlayer } from '#ahead/draft/ahead-engine'
import { expectedEnd } from '#ahead/expected-end'
import type { AheadChoices, ExpectedEnd } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { quickAhead } from '#ahead/quick-plan'
import { type Proof, proofOf } from '#common/proof'
import { secondsInMinute } from '#common/time'
import { type RotationColumn, rotationColumns } from '#rotation/problem'
import { type AheadModel, aheadModel, oneBin } from '#solver/ahead-model'
import { choicesOf, leansTime, solveShare } from '#solver/ahead-search'
import { leansModel, solveLeans } from '#solver/best-leans'
import { setDeadline } from '#solver/deadline'
import { loadSolver, type Solver } from '#solver/highs'
import type { AheadSettings } from '#solver/solve-ahead'

export type ReachableEnds = {
  /** By player; each column on its own, at whatever cost for the others. */
  readonly players: readonly ReachOfPlayer[]
  /** Minutes beyond the tolerance on the judged side, all players and columns: the least known, what no plan is below. */
  readonly outside: Proof
}

/** Minutes that are none: what a linear program may be off by. */
const hair = 1e-5

/** What any plan could bring inside; `start` is a plan whose ends are known to be reachable. */
export async function reachableEnds(
  problem: AheadProblem,
  settings: Omit<AheadSettings, 'onBetter'>,
): Promise<ReachableEnds> {
  const solver = await loadSolver()
  const deadline = setDeadline(settings)
  const { start, seed } = settings
  const given = start && checkAhead(problem, start.choices).length === 0 ? start : null
  const first = given ?? quickAhead(problem, { seed })
  if (!first)
    return {
      players: problem.players.map(() => allOf('open')),
      outside: proofOf(Number.POSITIVE_INFINITY, 0),
    }
  const model = aheadModel(problem, oneBin(problem))
  const reach = problem.players.map(() => allOf('open'))
  let least = Number.POSITIVE_INFINITY
  const note = (ends: readonly ExpectedEnd[]) => {
    let outside = 0
    ends.forEach((end, player) => {
      for (const column of rotationColumns) {
        const beyond = beyondOf(problem, end, { player, column })
        outside += beyond
        const own = reach[player]
        if (own && beyond <= hair) own[column] = 'yes'
      }
    })
    least = Math.min(least, outside)
  }
  note(expectedEnd(problem, first))
  const tried = (choices: AheadChoices, wanted: Wanted) => {
    if (checkAhead(problem, choices).length > 0) return
    const ends = endsFor(problem, { choices, wanted, solver, timeMs: leansTime(deadline) })
    if (ends) note(ends)
  }
  const everyone = problem.players.flatMap((_, player) =>
    rotationColumns.map((column) => ({ player, column })),
  )
  tried(first.choices, everyone)
  want(model, everyone)
  const within = { deadline, solver, seed, best: null }
  const all = solveShare(within, model, { share: 1 / 3 })
  if (all?.values) tried(choicesOf(model, all.values), everyone)
  for (const one of everyone) {
    const own = reach[one.player]
    if (own?.[one.column] !== 'open') continue
    want(model, [one])
    const answer = solveShare(within, model, { share: 1 / 4 })
    if (!answer) break
    if (answer.bound > hair) own[one.column] = 'no'
    else if (answer.values) tried(choicesOf(model, answer.values), [one])
  }
  return { players: reach, outside: proofOf(least, Math.max(0, all?.bound ?? 0)) }
}

type Wanted = readonly { readonly player: number; readonly column: RotationColumn }[]

/** Makes nothing count but what is beyond the tolerance in some columns. */
function want({ linear, outside }: AheadModel, wanted: Wanted): void {
  linear.costs.fill(0)
  for (const { player, column } of wanted) {
    const beyond = outside[player]?.[column]
    if (beyond !== undefined) linear.costs[beyond] = 1
  }
}

function endsFor(
  problem: AheadProblem,
  asked: {
    readonly choices: AheadChoices
    readonly wanted: Wanted
    readonly solver: Solver
    readonly timeMs: number
  },
): readonly ExpectedEnd[] | null {
  const { choices, wanted, solver, timeMs } = asked
  const model = leansModel(problem, choices)
  want(model, wanted)
  const { leans } = solveLeans(model, { solver, timeMs })
  return leans && expectedEnd(problem, { choices, leans })
}

function beyondOf(
  { players }: AheadProblem,
  end: ExpectedEnd,
  { player, column }: { readonly player: number; readonly column: RotationColumn },
): number {
  const tolerance = players[player]?.tolerance[column] ?? 0
  return secondsBeyond(column, { gap: end.gap[column], tolerance }) / secondsInMinute
}

function allOf(reach: Reach): Record<RotationColumn, Reach> {
  return Object.fromEntries(rotationColumns.map((column) => [column, reach])) as Record<RotationColumn, Reach>
}
