import { fairLineUp } from '#lineup/fair-line-up'
import { type LineUpGoal, lineUpGoals } from '#lineup/line-up'
import { allowedPlaces } from '#lineup/line-up-board'
import { movePrice } from '#lineup/line-up-values'
import { type LineUpProblem, windowSeconds } from '#lineup/problem'
import { loadSolver } from '#solver/highs'
import { LinearModel } from '#solver/linear-model'

type Term = readonly [column: number, value: number]

export type PlainLineUp = {
  readonly kind: 'solved' | 'impossible' | 'open'
  readonly ms: number
  /** Each given those before it. */
  readonly values: Readonly<Record<LineUpGoal, number>>
}

/**
 * The peer: player by window, on and in goal, as one model for each goal in its order, given to HiGHS as it is and
 * without a plan to begin with. For matches from their first kick-off in which everybody likes every line: who stays
 * on the field can then stay in its line, and only moves in and out of goal count.
 */
export async function solveLineUpPlainly(problem: LineUpProblem, timeMs: number): Promise<PlainLineUp> {
  const solver = await loadSolver()
  const began = performance.now()
  const values: Record<LineUpGoal, number> = {
    promise: 0,
    minutes: 0,
    goal: 0,
    starts: 0,
    lines: 0,
    changes: 0,
  }
  const caps: { goal: LineUpGoal; most: number }[] = []
  for (const goal of lineUpGoals) {
    const { linear, terms, scale } = plainModel(problem)
    for (const cap of caps) linear.addRow({ upper: cap.most + 1e-6 }, terms[cap.goal])
    for (const [column, value] of terms[goal]) linear.costs[column] = (linear.costs[column] ?? 0) + value
    const leftMs = Math.max(1, began + timeMs - performance.now())
    const answer = solver.solve(linear, { timeMs: leftMs, work: null, seed: 1 })
    const ms = performance.now() - began
    if (answer.status === 'infeasible') return { kind: 'impossible', ms, values }
    if (answer.status !== 'optimal') return { kind: 'open', ms, values }
    caps.push({ goal, most: answer.objective })
    values[goal] = answer.objective * scale[goal]
  }
  return { kind: 'solved', ms: performance.now() - began, values }
}

type Grid = readonly (readonly number[])[]

function plainModel(problem: LineUpProblem) {
  const linear = new LinearModel()
  const { windows, players, rules } = problem
  const lengths = windows.map(windowSeconds)
  const longest = Math.max(...lengths)
  const fair = fairLineUp(problem)
  const allowed = allowedPlaces(problem)
  const may = (player: number, window: number) => allowed[player * windows.length + window] ?? 0
  const grid = (upper: (player: number, window: number) => number): Grid =>
    players.map((_, player) =>
      windows.map((_, window) => linear.addColumn({ upper: upper(player, window), isWhole: true })),
    )
  const on = grid((player, window) => (may(player, window) & 15 ? 1 : 0))
  const keep = grid((player, window) => (may(player, window) & 1 ? 1 : 0))
  const comes = grid(() => 1)
  const at = (columns: Grid, player: number, window: number) => columns[player]?.[window] ?? 0
  const isInside = (window: number) => windows[window - 1]?.period === windows[window]?.period
  const terms: Record<LineUpGoal, Term[]> = {
    promise: [],
    minutes: [],
    goal: [],
    starts: [],
    lines: [],
    changes: [],
  }

  for (const [window, { places }] of windows.entries()) {
    const all = [...players.keys()]
    const field = places.back + places.middle + places.forward
    linear.addRow(
      { lower: field + places.keeper, upper: field + places.keeper },
      all.map((player): Term => [at(on, player, window), 1]),
    )
    linear.addRow(
      { lower: places.keeper, upper: places.keeper },
      all.map((player): Term => [at(keep, player, window), 1]),
    )
    for (let bits = 2; bits < 14; bits += 2) {
      const room =
        (bits & 2 ? places.back : 0) + (bits & 4 ? places.middle : 0) + (bits & 8 ? places.forward : 0)
      const bound = all.filter((player) => (may(player, window) & 14 & ~bits) === 0)
      linear.addRow(
        { upper: room },
        bound.flatMap((player): Term[] => [
          [at(on, player, window), 1],
          [at(keep, player, window), -1],
        ]),
      )
    }
    for (const [one, other] of problem.apart)
      linear.addRow({ upper: 1 }, [
        [at(on, one, window), 1],
        [at(on, other, window), 1],
      ])
  }

  for (const [player, own] of players.entries()) {
    const x = (window: number) => at(on, player, window)
    const isThere = (window: number) => own.isThere[window] ?? false
    for (const window of windows.keys()) {
      linear.addRow({ upper: 0 }, [
        [at(keep, player, window), 1],
        [x(window), -1],
      ])
      if ((may(player, window) & 14) === 0)
        linear.addRow({ upper: 0 }, [
          [x(window), 1],
          [at(keep, player, window), -1],
        ])
      if (!(may(player, window) & 16)) linear.addRow({ lower: 1 }, [[x(window), 1]])
      const before: Term[] = isInside(window) ? [[x(window - 1), -1]] : []
      linear.addRow({ upper: 0 }, [[x(window), 1], ...before, [at(comes, player, window), -1]])
      if (isInside(window)) terms.changes.push([at(comes, player, window), 1])
      if (isInside(window)) {
        const move = linear.addColumn({ upper: 1, isWhole: true })
        terms.lines.push([move, 1])
        for (const [now, then] of [
          [window, window - 1],
          [window - 1, window],
        ] as const)
          linear.addRow({ upper: 1 }, [
            [at(keep, player, now), 1],
            [x(then), 1],
            [at(keep, player, then), -1],
            [move, -1],
          ])
      }
      if (rules.keeperForPeriod && isInside(window) && isThere(window))
        linear.addRow({ lower: 0 }, [
          [at(keep, player, window), 1],
          [at(keep, player, window - 1), -1],
        ])
      let played = 0
      for (let later = window + 1; isInside(later) && isThere(later); later += 1) {
        played += lengths[later - 1] ?? 0
        if (played >= rules.leastSpellSeconds) break
        linear.addRow({ lower: 0 }, [
          [x(later), 1],
          [at(comes, player, window), -1],
        ])
      }
      let off = 0
      for (let later = window; later === window || isInside(later); later += 1) {
        if (rules.longestOffSeconds === null || !isThere(later)) break
        off += lengths[later] ?? 0
        if (off <= rules.longestOffSeconds) continue
        const run = Array.from({ length: later - window + 1 }, (_, index): Term => [x(window + index), 1])
        linear.addRow({ lower: 1 }, run)
        break
      }
    }
    if (rules.mostKeeperPeriods !== null) {
      const kept = new Map<number, number>()
      for (const [window, { period }] of windows.entries()) {
        const column = kept.get(period) ?? linear.addColumn({ upper: 1, isWhole: true })
        kept.set(period, column)
        linear.addRow({ upper: 0 }, [
          [at(keep, player, window), 1],
          [column, -1],
        ])
      }
      linear.addRow(
        { upper: rules.mostKeeperPeriods },
        [...kept.values()].map((column): Term => [column, 1]),
      )
    }
    if (own.mostSeconds !== null)
      linear.addRow(
        { upper: own.mostSeconds / longest },
        lengths.map((seconds, window): Term => [x(window), seconds / longest]),
      )
    const share = (columns: Grid, cost: (seconds: number) => void) => {
      const chosen: Term[] = []
      const times: Term[] = []
      for (const seconds of sumsOf(lengths)) {
        cost(seconds)
        const column = linear.columns - 1
        chosen.push([column, 1])
        times.push([column, seconds / longest])
      }
      linear.addRow({ lower: 1, upper: 1 }, chosen)
      const played = lengths.map((seconds, window): Term => [at(columns, player, window), -seconds / longest])
      linear.addRow({ lower: 0, upper: 0 }, [...times, ...played])
    }
    share(on, (seconds) => {
      const column = linear.addColumn({ upper: 1, isWhole: true })
      const due = own.owed.playSeconds + (fair.play[player] ?? 0)
      terms.minutes.push([column, ((due - seconds) / longest) ** 2])
      terms.promise.push([column, Math.max(0, own.leastSeconds - seconds) / longest])
    })
    if (own.keeps)
      share(keep, (seconds) => {
        const column = linear.addColumn({ upper: 1, isWhole: true })
        const due = own.owed.keepSeconds + (fair.keep[player] ?? 0)
        terms.goal.push([column, ((due - seconds) / longest) ** 2])
      })
    const dueStart = own.owed.starts + (fair.starts[player] ?? 0)
    // A number that never falls below nothing: the constant part of the squares is held by a column that is always one.
    const one = linear.addColumn({ lower: 1, upper: 1, isWhole: false })
    terms.starts.push([one, dueStart ** 2], [x(0), 1 - 2 * dueStart])
  }
  if (rules.mostChanges !== null) linear.addRow({ upper: rules.mostChanges }, terms.changes)
  return {
    linear,
    terms,
    scale: {
      promise: longest,
      minutes: longest ** 2,
      goal: longest ** 2,
      starts: 1,
      lines: movePrice,
      changes: 1,
    },
  }
}

function sumsOf(lengths: readonly number[]): readonly number[] {
  let sums = new Set([0])
  for (const length of lengths) sums = new Set([...sums].flatMap((sum) => [sum, sum + length]))
  return [...sums].sort((one, other) => one - other)
}
