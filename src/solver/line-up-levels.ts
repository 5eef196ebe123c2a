import type { Seconds } from '#common/time'
import { type FairLineUp, fairLineUp } from '#lineup/fair-line-up'
import { allowedPlaces, offPlace } from '#lineup/line-up-board'
import { placeSeconds } from '#lineup/place-seconds'
import { type LineUpProblem, windowSeconds } from '#lineup/problem'
import { placesInAll } from '#match/format/places-in-all'
import { evenLevels } from '#solver/even-levels'
import { goalOpens } from '#solver/goal-opens'
import type { ClassLevels, Level } from '#solver/line-up-class-columns'
import type { LineUpClass } from '#solver/line-up-classes'

/** Values that must not be passed, goal by goal; null: any. */
export type Within = {
  readonly promise: number | null
  readonly minutes: number | null
  readonly goal: number | null
  readonly starts: number | null
}
export const anything: Within = { promise: null, minutes: null, goal: null, starts: null }

export type LevelTable = {
  readonly levels: readonly ClassLevels[]
  /** What no line-up goes below that keeps `within.promise`; costs of levels are what they add, over `scale`. */
  readonly bounds: { readonly minutes: number; readonly goal: number; readonly starts: number }
  readonly scale: { readonly minutes: number; readonly goal: number; readonly starts: number }
}

const hair = 1e-4

/** Every time that each class may come to, without those that alone pass what is allowed. */
export function levelTable(
  problem: LineUpProblem,
  classes: readonly LineUpClass[],
  within: Within | 'atBounds',
): LevelTable {
  const fair = fairLineUp(problem)
  const longest = Math.max(1, ...problem.windows.map(windowSeconds))
  const minutes = minutesOf(problem, classes, fair, within === 'atBounds' ? 0 : within.promise)
  const goal = goalOf(problem, classes, fair)
  const starts = startsOf(problem, classes, fair)
  const slack = (of: 'minutes' | 'goal' | 'starts', bound: number) => {
    if (within === 'atBounds') return hair
    const most = within[of]
    return most === null ? Number.POSITIVE_INFINITY : Math.max(0, most - bound) + hair
  }
  const square = longest ** 2
  const cut = (
    table: Table,
    index: number,
    to: { readonly slack: number; readonly over: number },
  ): readonly Level[] =>
    (table.levels[index] ?? []).flatMap((seconds, level) => {
      const cost = table.beyond[index]?.[level] ?? 0
      return cost > to.slack ? [] : [{ seconds, cost: cost < hair / 10 ? 0 : cost / to.over, short: 0 }]
    })
  return {
    levels: classes.map(({ members }, index) => {
      const least = problem.players[members[0] ?? 0]?.leastSeconds ?? 0
      return {
        play: cut(minutes, index, { slack: slack('minutes', minutes.bound), over: square }).map((level) => ({
          ...level,
          short: Math.max(0, least - level.seconds) / longest,
        })),
        keep: cut(goal, index, { slack: slack('goal', goal.bound), over: square }),
        start: cut(starts, index, { slack: slack('starts', starts.bound), over: 1 }),
      }
    }),
    bounds: { minutes: minutes.bound, goal: goal.bound, starts: starts.bound },
    scale: { minutes: square, goal: square, starts: 1 },
  }
}

type Table = {
  readonly levels: readonly (readonly Seconds[])[]
  readonly beyond: readonly (readonly number[])[]
  readonly bound: number
}

function minutesOf(
  problem: LineUpProblem,
  classes: readonly LineUpClass[],
  fair: FairLineUp,
  promise: number | null,
): Table {
  const allowed = allowedPlaces(problem)
  const count = problem.windows.length
  const levels = classes.map(({ members }) => {
    const player = members[0] ?? 0
    const own = problem.players[player]
    const least = (own?.leastSeconds ?? 0) - (promise ?? Number.POSITIVE_INFINITY)
    let sums = new Set([0])
    for (const [window, span] of problem.windows.entries()) {
      const bits = allowed[player * count + window] ?? 0
      const seconds = windowSeconds(span)
      const next = new Set<number>()
      for (const sum of sums) {
        if (bits & (1 << offPlace)) next.add(sum)
        if (bits & 15) next.add(sum + seconds)
      }
      sums = next
    }
    return risingOf(sums).filter((sum) => sum >= least && sum <= (own?.mostSeconds ?? sum))
  })
  const dueOf = (player: number) =>
    (problem.players[player]?.owed.playSeconds ?? 0) + (fair.play[player] ?? 0)
  return tableOf(classes, levels, { dueOf, total: placeSeconds(problem.windows) })
}

function goalOf(problem: LineUpProblem, classes: readonly LineUpClass[], fair: FairLineUp): Table {
  const opens = goalOpens(problem)
  const levels = classes.map(({ members }) => {
    const own = problem.players[members[0] ?? 0]
    return own?.keeps ? keepLevels(problem, own.isThere, opens) : [0]
  })
  const dueOf = (player: number) => {
    const own = problem.players[player]
    return own?.keeps ? own.owed.keepSeconds + (fair.keep[player] ?? 0) : 0
  }
  return tableOf(classes, levels, { dueOf, total: placeSeconds(problem.windows, 'keeper') })
}

/** Times in goal that can come about: where a keeper stays for the period, only from an opening to its end or to going home. */
function keepLevels(
  problem: LineUpProblem,
  isThere: readonly boolean[],
  opens: readonly boolean[],
): readonly Seconds[] {
  const { windows, rules } = problem
  // Until a period ends: sums so far of those who are in goal, and of those who are not.
  const out = new Set([0])
  let inside = new Set<number>()
  for (const [index, window] of windows.entries()) {
    if (windows[index - 1]?.period !== window.period) {
      for (const sum of inside) out.add(sum)
      inside = new Set(index === 0 ? [0] : out)
    }
    const seconds = windowSeconds(window)
    const may = isThere[index] && window.places.keeper > 0
    const from = new Set(inside)
    if (opens[index]) for (const sum of out) from.add(sum)
    const next = may ? new Set([...from].map((sum) => sum + seconds)) : new Set<number>()
    const mustStay = rules.keeperForPeriod && may
    if (!mustStay) for (const sum of inside) out.add(sum)
    inside = next
  }
  for (const sum of inside) out.add(sum)
  return risingOf(out)
}

function startsOf(problem: LineUpProblem, classes: readonly LineUpClass[], fair: FairLineUp): Table {
  const [first] = problem.windows
  if (!problem.hasStart || !first)
    return { levels: classes.map(() => [0, 1]), beyond: classes.map(() => [0, 0]), bound: 0 }
  const allowed = allowedPlaces(problem)
  const levels = classes.map(({ members }) => {
    const bits = allowed[(members[0] ?? 0) * problem.windows.length] ?? 0
    return [...(bits & (1 << offPlace) ? [0] : []), ...(bits & 15 ? [1] : [])]
  })
  const dueOf = (player: number) => (problem.players[player]?.owed.starts ?? 0) + (fair.starts[player] ?? 0)
  return tableOf(classes, levels, { dueOf, total: placesInAll(first.places) })
}

function tableOf(
  classes: readonly LineUpClass[],
  levels: Table['levels'],
  { dueOf, total }: { readonly dueOf: (player: number) => number; readonly total: number },
): Table {
  const asked = classes.map(({ members }, index) => ({
    due: dueOf(members[0] ?? 0),
    levels: levels[index] ?? [],
    count: members.length,
  }))
  return { levels, ...evenLevels(asked, total) }
}

function risingOf(sums: ReadonlySet<number>): readonly number[] {
  return [...sums].sort((one, other) => one - other)
}
