import type { LineUpPlan } from '#lineup/line-up'
import type { PlannedSpell } from '#lineup/match-plan'
import type { LineUpProblem } from '#lineup/problem'

/** A plan as spells: each player's unbroken time in one line inside one period, in the order of the players, then of time. */
export function spellsOfLineUp(problem: LineUpProblem, plan: LineUpPlan): readonly PlannedSpell[] {
  return problem.players.flatMap(({ id }, player) => {
    const spells: PlannedSpell[] = []
    for (const [index, window] of problem.windows.entries()) {
      const line = plan[player]?.[index] ?? null
      if (line === null) continue
      const last = spells.at(-1)
      const goesOn =
        last?.line === line &&
        last.end === window.start &&
        problem.windows[index - 1]?.period === window.period
      if (last && goesOn) spells[spells.length - 1] = { ...last, end: window.end }
      else spells.push({ playerId: id, line, start: window.start, end: window.end })
    }
    return spells
  })
}
