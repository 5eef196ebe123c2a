import type { AreaShape } from '#practice/design'
import type { ColumnOutcome } from '#practice/grid-turns'
import type { Turn } from '#practice/turn'
import { joinPresence, listPresent } from '#squad/joined-presence'
import type { PresenceLine } from '#squad/presence'

/** What a column comes to at a glance. */
export type ColumnSummary = {
  /** One entry an area, as in most of its turns; of two alike, as in the later ones. */
  readonly shapes: readonly AreaShape[]
  /** Turns whose numbers are others, because somebody came or left. */
  readonly otherTurns: number
  /** Most who wait in one of its turns. */
  readonly waiting: number
  readonly turnCount: number
}

export function summarizeColumn(outcome: ColumnOutcome, register: readonly PresenceLine[]): ColumnSummary {
  const presence = joinPresence(register)
  // The second half of a free game is the first with its sides swapped, and is not told apart.
  const firstHalves = outcome.turns.filter((turn) => !turn.continuesWait)
  const turns = firstHalves.length > 0 ? firstHalves : outcome.turns
  const shapesOfTurns = turns.map((turn) => turn.stations.map(shapeOf))
  const counts = new Map<string, number>()
  for (const shapes of shapesOfTurns) {
    const key = JSON.stringify(shapes)
    counts.set(key, (counts.get(key) ?? 0) + 1)
  }
  const most = Math.max(0, ...counts.values())
  const common = [...counts].findLast(([, count]) => count === most)?.[0]
  const waitingIn = (turn: Turn, shapes: readonly AreaShape[]) =>
    listPresent(presence, { from: turn.start, to: turn.end }).length -
    shapes.reduce((sum, { attack, defend, keep }) => sum + attack + defend + keep, 0)
  return {
    shapes: common === undefined ? [] : JSON.parse(common),
    otherTurns: turns.length - most,
    waiting: Math.max(0, ...turns.map((turn, index) => waitingIn(turn, shapesOfTurns[index] ?? []))),
    turnCount: outcome.turns.length,
  }
}

function shapeOf(station: Turn['stations'][number]): AreaShape {
  return { attack: station.attack.length, defend: station.defend.length, keep: station.keep.length }
}
