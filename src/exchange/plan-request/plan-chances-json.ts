import type { ChanceInside, Chances, WayChances } from '#ahead/chance/chances'
import type { HardestToLose } from '#ahead/chance/hardest-in-slices'
import type { AheadProblem } from '#ahead/problem'

/** How likely everyone ends inside, under the plan and as so far, and which practice would be hardest to lose. */
export function planChancesJson(
  problem: AheadProblem,
  { isExact, played, plan, carryOn }: Chances,
  hardest: HardestToLose,
) {
  return {
    isExact,
    played,
    plan: wayJson(problem, plan),
    carryOn: carryOn && wayJson(problem, carryOn),
    hardest: hardestJson(problem, hardest),
  }
}

function wayJson(problem: AheadProblem, { players, everyone, meanInside }: WayChances) {
  return {
    everyone: chanceJson(everyone),
    meanInside,
    players: players.map(({ all, seats, themes, columns, byTheme }, player) => ({
      id: problem.players[player]?.id ?? '',
      all: chanceJson(all),
      seats: chanceJson(seats),
      themes: chanceJson(themes),
      columns: Object.fromEntries(
        Object.entries(columns).map(([column, chance]) => [column, chanceJson(chance)]),
      ),
      byTheme: Object.fromEntries(
        problem.themes.flatMap(({ id, wishedShare }, theme) => {
          const chance = byTheme[theme]
          return wishedShare > 0 && chance ? [[id, chanceJson(chance)]] : []
        }),
      ),
    })),
  }
}

function chanceJson({ chance, low, high, word }: ChanceInside) {
  return { chance, low, high, word }
}

function hardestJson({ practices }: AheadProblem, { hardest }: HardestToLose) {
  if (!hardest) return null
  const { practice, fewerInside, fewerInSeats, moreOutside } = hardest.lost
  return {
    practice: practices[practice]?.id ?? '',
    by: hardest.by,
    fewerInside,
    fewerInSeats,
    moreSecondsOutside: moreOutside,
  }
}
