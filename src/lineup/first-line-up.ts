import type { Chance } from '#common/chance'
import { dealWindow } from '#lineup/deal-window'
import { type LineUpBoard, offPlace } from '#lineup/line-up-board'
import { lines } from '#match/match'

const mustStay = 1e9
/** In seconds, so that anybody may come before anybody. */
const shaken = 3000

/**
 * Fills a board window by window: who is due most of what is left comes on, keepers stay, and who is on stays in its
 * line. False where a window cannot be filled at all. With chance the choices differ from one time to the next.
 */
export function layFirstLineUp(board: LineUpBoard, chance: Chance | null = null): boolean {
  const { problem, playerCount, windowCount } = board
  const hadSeconds = new Float64Array(playerCount)
  const hadGoal = new Float64Array(playerCount)
  for (let window = 0; window < windowCount; window += 1) {
    const places = problem.windows[window]?.places
    if (!places) return false
    const capacity = [...lines.map((line) => places[line]), playerCount]
    const onCount = capacity.slice(0, offPlace).reduce((sum, count) => sum + count, 0)
    capacity[offPlace] = playerCount - onCount
    if (onCount > playerCount) return false
    const costs = problem.players.map((_, player) =>
      costsOf(board, { player, window, hadSeconds, hadGoal }).map((cost) =>
        cost === null || !chance ? cost : cost + chance() * shaken,
      ),
    )
    const dealt = dealWindow({ capacity, costs })
    if (!dealt) return false
    for (const [player, place] of dealt.entries()) {
      board.places[player * windowCount + window] = place
      const seconds = board.seconds[window] ?? 0
      if (place !== offPlace) hadSeconds[player] = (hadSeconds[player] ?? 0) + seconds
      if (place === 0) hadGoal[player] = (hadGoal[player] ?? 0) + seconds
    }
  }
  return true
}

/** What each place costs a player in a window: being off what it is still due, goal the same of goal, and a change a little. */
function costsOf(
  board: LineUpBoard,
  at: {
    readonly player: number
    readonly window: number
    readonly hadSeconds: Float64Array
    readonly hadGoal: Float64Array
  },
): readonly (number | null)[] {
  const { problem, fair, windowCount } = board
  const { player, window } = at
  const own = problem.players[player]
  const mask = board.allowed[player * windowCount + window] ?? 0
  if (!own) return []
  const before = placeBefore(board, player, window)
  const due = own.owed.playSeconds + (fair.play[player] ?? 0)
  const left = Math.max(own.leastSeconds, due) - (at.hadSeconds[player] ?? 0)
  const goalDue = own.owed.keepSeconds + (fair.keep[player] ?? 0) - (at.hadGoal[player] ?? 0)
  const isHeldInGoal = before === 0 && problem.rules.keeperForPeriod
  return [...lines.keys(), offPlace].map((place) => {
    if ((mask & (1 << place)) === 0) return null
    const moves = before !== null && before !== place ? 1 : 0
    if (place === offPlace) return left + moves + (isHeldInGoal ? mustStay : 0)
    if (place === 0) return isHeldInGoal ? -mustStay : moves - goalDue / 4
    return moves + (isHeldInGoal ? mustStay : 0)
  })
}

/** The place in the window before, inside the same period; null at its kick-off. */
function placeBefore(board: LineUpBoard, player: number, window: number): number | null {
  if (window === 0) {
    const line = board.problem.players[player]?.running.line ?? null
    return board.isRunning ? (line === null ? offPlace : lines.indexOf(line)) : null
  }
  if (board.period[window] !== board.period[window - 1]) return null
  return board.places[player * board.windowCount + window - 1] ?? null
}
