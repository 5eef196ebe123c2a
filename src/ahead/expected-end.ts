import { evenSeats } from '#ahead/even-seats'
import { type AheadPlan, chosenOffer, type ExpectedEnd } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { seatColumns, seatMeaning } from '#ahead/seat-column'
import { themeWithAbove } from '#ahead/theme-with-above'
import type { RotationColumn } from '#rotation/problem'

/** How everyone is expected to stand after the last practice of a plan, in the order of the problem's players. */
export function expectedEnd(problem: AheadProblem, plan: AheadPlan): readonly ExpectedEnd[] {
  const ends = problem.players.map((player) => ({
    gap: { ...player.gap } as Record<RotationColumn, number>,
    playedSeconds: player.playedSeconds,
    themeSeconds: [...player.themeSeconds],
  }))
  problem.practices.forEach((practice, at) => {
    const offer = chosenOffer(problem, plan.choices, at)
    if (!offer) return
    const even = evenSeats(problem, practice, offer)
    const themes = themeWithAbove(problem.themes, offer.theme)
    ends.forEach((end, player) => {
      let played = 0
      for (const column of seatColumns) {
        const lean = plan.leans[at]?.[player]?.[column] ?? 0
        const { role, situation } = seatMeaning[column]
        end.gap[role] += lean
        if (situation) end.gap[situation] += lean
        // Who sits more waits less.
        end.gap.rest -= lean
        played += (even[player]?.[column] ?? 0) + lean
      }
      end.playedSeconds += played
      for (const theme of themes) end.themeSeconds[theme] = (end.themeSeconds[theme] ?? 0) + played
    })
  })
  return ends.map((end) => ({
    ...end,
    themeDue: problem.themes.map(({ wishedShare }) => wishedShare * end.playedSeconds),
  }))
}
