import { accept, type Result, refuse } from '#common/result'
import { type LineGrid, type LineSpan, spansOfGrid } from '#match/line-grid'
import { lineMarkOf, lineOf } from '#match/line-mark'
import type { Match, Spell } from '#match/match'
import { isPresentThroughout, joinPresence } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'
import type { PresenceLine } from '#squad/presence'

/** Why what stands in the grid cannot be written; `span` is from 0. */
export type LineGridRefusal =
  | { readonly reason: 'notThere'; readonly span: number; readonly playerId: PlayerId }
  /** Others have players: this one was forgotten. */
  | { readonly reason: 'nobodyPlays'; readonly span: number }

/**
 * The spells of a grid: spans of one period in which a player stays in one line are one spell. In the order of the
 * rows, each in order of time.
 */
export function spellsOfGrid(
  grid: LineGrid,
  register: readonly PresenceLine[],
): Result<readonly Spell[], LineGridRefusal> {
  const spans = spansOfGrid(grid)
  const presence = joinPresence(register)
  const absences = grid.rows.flatMap(({ playerId, marks }) =>
    spans.flatMap(({ start, end }, span): LineGridRefusal[] =>
      lineOf(marks[span] ?? '') && !isPresentThroughout(presence, playerId, { from: start, to: end })
        ? [{ reason: 'notThere', span, playerId }]
        : [],
    ),
  )
  const plays = spans.map((_, span) => grid.rows.some((row) => lineOf(row.marks[span] ?? '')))
  const forgotten = plays.flatMap((isPlayed, span): LineGridRefusal[] =>
    isPlayed || !plays.includes(true) ? [] : [{ reason: 'nobodyPlays', span }],
  )
  if (absences.length + forgotten.length > 0) return refuse(...absences, ...forgotten)
  return accept(grid.rows.flatMap(({ playerId, marks }) => spellsOfRow({ playerId, marks }, spans)))
}

/** Written spells opened again as a grid, a change wherever one begins or ends inside a period. */
export function gridOfSpells(
  match: Pick<Match, 'periods' | 'spells'>,
  playerIds: readonly PlayerId[],
): LineGrid {
  const edges = new Set(match.periods.flatMap((period) => [period.start, period.end]))
  const times = new Set(match.spells.flatMap((spell) => [spell.start, spell.end]))
  const changes = [...times].filter((at) => !edges.has(at)).toSorted((one, other) => one - other)
  const spans = spansOfGrid({ periods: match.periods, changes })
  const markIn = (playerId: PlayerId, span: LineSpan) => {
    const spell = match.spells.find(
      (own) => own.playerId === playerId && own.start <= span.start && span.end <= own.end,
    )
    return spell ? lineMarkOf(spell.line) : ''
  }
  return {
    periods: match.periods,
    changes,
    rows: playerIds.map((playerId) => ({ playerId, marks: spans.map((span) => markIn(playerId, span)) })),
  }
}

function spellsOfRow(row: LineGrid['rows'][number], spans: readonly LineSpan[]): readonly Spell[] {
  const spells: Spell[] = []
  for (const [index, span] of spans.entries()) {
    const line = lineOf(row.marks[index] ?? '')
    if (!line) continue
    const last = spells.at(-1)
    const isSamePeriod = spans[index - 1]?.periodIndex === span.periodIndex
    if (last?.line === line && last.end === span.start && isSamePeriod) {
      spells[spells.length - 1] = { ...last, end: span.end }
    } else {
      spells.push({ playerId: row.playerId, line, start: span.start, end: span.end })
    }
  }
  return spells
}
