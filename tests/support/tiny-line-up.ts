import { checkLineUp } from '#lineup/check-line-up'
import { type LineUpPlan, type LineUpValues, lineUpGoals } from '#lineup/line-up'
import { lineUpValues } from '#lineup/line-up-values'
import { type LineUpProblem, noRules } from '#lineup/problem'
import { lineWishes } from '#match/format/line-wish'
import { type Line, lines } from '#match/match'
import { smallLineUp } from './line-up-builder'
import { seededRandom } from './seeded-random'

/** Four players, a keeper and a back, three windows of two periods; with rules, absences, held places and pairs by chance. */
export function tinyLineUp(seed: number): LineUpProblem {
  const random = seededRandom(seed * 31 + 7)
  const maybe = <Value>(share: number, value: Value, otherwise: Value) =>
    random.chance(share) ? value : otherwise
  const places = { keeper: 1, back: 1, middle: 0, forward: 0 }
  const small = smallLineUp({ places, periods: 1, windows: 3 })
  const cuts = random.pick([
    [300, 600],
    [240, 600],
    [300, 540],
  ])
  const windows = small.windows.map((window, index) => ({
    ...window,
    period: index === 2 ? 1 : 0,
    start: [0, ...cuts][index] ?? 0,
    end: [...cuts, 900][index] ?? 900,
  }))
  const players = small.players.map((own) => ({
    ...own,
    keeps: random.chance(0.6),
    isThere: windows.map(() => random.chance(0.85)),
    owed: {
      playSeconds: random.whole(-4000, 4000) / 10,
      keepSeconds: random.whole(-2000, 2000) / 10,
      starts: random.whole(-100, 100) / 100,
    },
    leastSeconds: maybe(0.5, 300, 0),
    mostSeconds: maybe(0.1, 600, null),
    wishes: { ...own.wishes, back: random.chance(0.2) ? random.pick(lineWishes) : ('open' as const) },
    metSeconds: { back: random.whole(0, 3000), middle: random.whole(0, 3000), forward: 0 },
  }))
  return {
    ...small,
    windows,
    players,
    rules: {
      ...noRules,
      keeperForPeriod: random.chance(0.5),
      mostKeeperPeriods: maybe(0.2, 1, null),
      leastSpellSeconds: maybe(0.3, 500, 0),
      longestSpellSeconds: maybe(0.2, 450, null),
      longestOffSeconds: maybe(0.2, 450, null),
      mostChanges: maybe(0.2, 1, null),
      mayReturn: random.chance(0.8),
    },
    apart: random.chance(0.3) ? [[0, 1]] : [],
    fixed: random.chance(0.4)
      ? [
          {
            player: random.whole(0, 3),
            window: random.whole(0, 2),
            place: random.pick(['on', 'off', 'keeper'] as const),
          },
        ]
      : [],
  }
}

const every = everyTinyPlan()

/** The best of all there are, goal by goal; null where none keeps the rules. */
export function bestOfEvery(problem: LineUpProblem): LineUpValues | null {
  let best: LineUpValues | null = null
  for (const plan of every) {
    if (checkLineUp(problem, plan).length > 0) continue
    const values = lineUpValues(problem, plan)
    if (!best || isBetter(values, best)) best = values
  }
  return best
}

function isBetter(one: LineUpValues, other: LineUpValues): boolean {
  const first = lineUpGoals.find((goal) => Math.abs(one[goal] - other[goal]) > 1e-6)
  return first !== undefined && one[first] < other[first]
}

/** Every way to put one in goal and one at the back in every window. */
function everyTinyPlan(): readonly LineUpPlan[] {
  const windows: (readonly (Line | null)[])[] = []
  for (let keeper = 0; keeper < 4; keeper += 1)
    for (let back = 0; back < 4; back += 1)
      if (keeper !== back)
        windows.push(
          [0, 1, 2, 3].map((player) =>
            player === keeper ? (lines[0] ?? null) : player === back ? (lines[1] ?? null) : null,
          ),
        )
  return windows.flatMap((first) =>
    windows.flatMap((second) =>
      windows.map((third) =>
        [0, 1, 2, 3].map((player) => [first[player] ?? null, second[player] ?? null, third[player] ?? null]),
      ),
    ),
  )
}
