import { chanceWord } from '#ahead/chance/chance-word'
import type { ChanceInside, PlayerChances, WayChances } from '#ahead/chance/chances'
import { endJudge, firstColumnJudged, firstThemeJudged } from '#ahead/chance/judge-ends'
import type { Standing } from '#ahead/chance/standing'
import type { AheadProblem } from '#ahead/problem'
import { wilsonInterval } from '#common/statistics/wilson'
import { type RotationColumn, rotationColumns } from '#rotation/problem'

export type WayTally = {
  readonly add: (end: Standing, weight: number) => void
  readonly chances: (how: { readonly isExact: boolean }) => WayChances
}

/** Counts how often who ends inside. */
export function wayTally(problem: Pick<AheadProblem, 'players' | 'themes'>): WayTally {
  const { players, themes } = problem
  const { inside, judgedCount } = endJudge(problem)
  const hits = new Float64Array(players.length * judgedCount)
  let [everyone, all] = [0, 0]

  const add: WayTally['add'] = (end, weight) => {
    const marks = inside(end)
    let isEveryone = true
    for (let at = 0; at < marks.length; at++) if (marks[at]) hits[at] = (hits[at] ?? 0) + weight
    for (let player = 0; player < players.length; player++)
      if (!marks[player * judgedCount]) isEveryone = false
    if (isEveryone) everyone += weight
    all += weight
  }

  const chances: WayTally['chances'] = ({ isExact }) => {
    const of = (count: number) => chanceInside(count, { all, isExact })
    const own = players.map((_, player): PlayerChances => {
      const judged = (at: number) => of(hits[player * judgedCount + at] ?? 0)
      return {
        all: judged(0),
        seats: judged(1),
        themes: judged(2),
        columns: Object.fromEntries(
          rotationColumns.map((column, place) => [column, judged(firstColumnJudged + place)]),
        ) as Record<RotationColumn, ChanceInside>,
        byTheme: themes.map((_theme, theme) => judged(firstThemeJudged + theme)),
      }
    })
    const mean = (what: 'all' | 'seats') => own.reduce((sum, player) => sum + player[what].chance, 0)
    return { players: own, everyone: of(everyone), meanInside: { all: mean('all'), seats: mean('seats') } }
  }
  return { add, chances }
}

function chanceInside(
  hits: number,
  { all, isExact }: { readonly all: number; readonly isExact: boolean },
): ChanceInside {
  // Weights of all ways add up to 1 but for the last digits.
  const chance = all > 0 ? Math.min(1, hits / all) : 0
  const interval = isExact ? { low: chance, high: chance } : wilsonInterval({ hits, tries: all })
  return { chance, ...interval, word: chanceWord(chance) }
}
