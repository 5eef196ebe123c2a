import { dealWindow } from '#lineup/deal-window'
import type { LineUpPlan } from '#lineup/line-up'
import { boardOf, offPlace, planOfBoard } from '#lineup/line-up-board'
import { movePrice } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'
import { settleLineUp } from '#lineup/search-line-up'
import { swapBoard } from '#lineup/swap-board'
import { lines } from '#match/match'
import type { LineUpPatterns } from '#solver/line-up-stage'
import { inGoal, offField } from '#solver/row-state'

const settleTries = 20_000

/** Exchanges of places that make a line-up better goal by goal, and tidier. */
export function settledLineUp(problem: LineUpProblem, plan: LineUpPlan): LineUpPlan {
  const board = boardOf(problem)
  for (const [player, own] of plan.entries())
    for (const [window, line] of own.entries())
      board.places[player * board.windowCount + window] = line === null ? offPlace : lines.indexOf(line)
  settleLineUp(swapBoard(board), settleTries)
  return planOfBoard(board)
}

/** Puts those who are on into lines, window by window, where there is room over the term. */
export function dealLines(problem: LineUpProblem, patterns: LineUpPatterns): LineUpPlan | null {
  const board = boardOf(problem)
  const { windowCount, playerCount, seconds, room } = board
  const used = new Float64Array(playerCount * 3)
  for (let window = 0; window < windowCount; window += 1) {
    const places = problem.windows[window]?.places
    if (!places) return null
    const length = seconds[window] ?? 0
    const samePeriod = window > 0 && board.period[window - 1] === board.period[window]
    const costs = patterns.map((own, player) =>
      [...lines.keys(), offPlace].map((place): number | null => {
        const here = own[window] ?? offField
        const fits =
          here === offField
            ? place === offPlace
            : here === inGoal
              ? place === 0
              : place > 0 && place < offPlace
        const at = player * windowCount + window
        if (!fits || ((board.allowed[at] ?? 0) & (1 << place)) === 0) return null
        if (place === 0 || place === offPlace) return 0
        const line = player * 3 + place - 1
        const beyond = Math.max(0, (used[line] ?? 0) + length - Math.max(used[line] ?? 0, room[line] ?? 0))
        const before = samePeriod ? board.places[at - 1] : undefined
        const moves = before !== undefined && before !== offPlace && before !== 0 && before !== place
        return beyond + (moves ? movePrice : 0)
      }),
    )
    const off = patterns.filter((own) => own[window] === offField).length
    const dealt = dealWindow({ capacity: [...lines.map((line) => places[line]), off], costs })
    if (!dealt) return null
    for (const [player, place] of dealt.entries()) {
      board.places[player * windowCount + window] = place
      if (place > 0 && place < offPlace)
        used[player * 3 + place - 1] = (used[player * 3 + place - 1] ?? 0) + length
    }
  }
  return planOfBoard(board)
}
