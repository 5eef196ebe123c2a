import type { Seconds } from '#common/time'
import { addChange, type LineGrid, spansOfGrid } from '#match/line-grid'
import { lineOf } from '#match/line-mark'
import type { Period } from '#match/match'
import { endOfMatch } from '#match/match-entry'
import { isPresentThroughout, joinPresence } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'
import {
  hereThroughout,
  linesOfEntries,
  type RegisterEntry,
  type RegisterSegment,
} from '#squad/register-segments'
import type { Guest, WritingPlayer } from '#ui/entry/practice-draft'

/** A match while it is typed in. */
export type MatchDraft = {
  readonly grid: LineGrid
  readonly register: readonly RegisterEntry[]
  readonly guests: readonly Guest[]
  readonly takenBack: readonly PlayerId[]
}

/** A match that nobody has written yet: everyone expected is here and off; no changes but the periods. */
export function freshMatchDraft(players: readonly WritingPlayer[], periods: readonly Period[]): MatchDraft {
  const playerIds = players.filter((player) => player.isExpected).map((player) => player.id)
  return {
    grid: {
      periods,
      changes: [],
      rows: playerIds.map((playerId) => ({ playerId, marks: periods.map(() => '' as const) })),
    },
    register: playerIds.map((playerId) => ({ playerId, segments: hereThroughout })),
    guests: [],
    takenBack: [],
  }
}

/** Who is there for the whole of each span, one set a span. */
export function thereBySpan({
  grid,
  register,
}: Pick<MatchDraft, 'grid' | 'register'>): readonly ReadonlySet<PlayerId>[] {
  const here = linesOfEntries(register, endOfMatch(grid)).filter((line) => line.state === 'here')
  const presence = joinPresence(here)
  return spansOfGrid(grid).map(
    ({ start, end }) =>
      new Set(
        grid.rows
          .map((row) => row.playerId)
          .filter((id) => isPresentThroughout(presence, id, { from: start, to: end })),
      ),
  )
}

/** The draft with marks of players in spans they are not there for left out. */
export function withLineGrid(draft: MatchDraft, grid: LineGrid): MatchDraft {
  const there = thereBySpan({ ...draft, grid })
  const rows = grid.rows.map(({ playerId, marks }) => ({
    playerId,
    marks: there.map((ids, span) => (ids.has(playerId) ? (marks[span] ?? '') : '')),
  }))
  return { ...draft, grid: { ...grid, rows } }
}

/** The draft with a player's register changed: where the player came or left, the match is cut, as at any other change. */
export function withMatchSegments(
  draft: MatchDraft,
  playerId: PlayerId,
  segments: readonly RegisterSegment[],
): MatchDraft {
  const register = draft.register.map((own) => (own.playerId === playerId ? { playerId, segments } : own))
  const times = segments.flatMap(({ from, to }) => (to === null ? [from] : [from, to]))
  return withLineGrid({ ...draft, register }, times.reduce(addChange, draft.grid))
}

export function withMatchPlayer(draft: MatchDraft, playerId: PlayerId): MatchDraft {
  if (draft.register.some((own) => own.playerId === playerId)) return draft
  const marks = spansOfGrid(draft.grid).map(() => '' as const)
  return {
    ...draft,
    grid: { ...draft.grid, rows: [...draft.grid.rows, { playerId, marks }] },
    register: [...draft.register, { playerId, segments: hereThroughout }],
  }
}

export function withMatchGuest(draft: MatchDraft, guest: Guest): MatchDraft {
  return { ...withMatchPlayer(draft, guest.id), guests: [...draft.guests, guest] }
}

/** The draft with other periods; changes and marks stay where they still are inside one. */
export function withPeriods(draft: MatchDraft, periods: readonly Period[]): MatchDraft {
  const before = spansOfGrid(draft.grid)
  const inside = draft.grid.changes.filter((at) =>
    periods.some((period) => period.start < at && at < period.end),
  )
  const grid = { ...draft.grid, periods, changes: inside }
  const markAt = (marks: LineGrid['rows'][number]['marks'], at: Seconds) =>
    marks[before.findIndex((span) => span.start <= at && at < span.end)] ?? ''
  const rows = draft.grid.rows.map(({ playerId, marks }) => ({
    playerId,
    marks: spansOfGrid(grid).map((span) => markAt(marks, (span.start + span.end) / 2)),
  }))
  return withLineGrid(draft, { ...grid, rows })
}

/** How many play in each line of a span: keeper, backs, middle, forwards. */
export function numbersOfSpan(
  grid: LineGrid,
  span: number,
): { readonly text: string; readonly count: number } {
  const lines = grid.rows.map((row) => lineOf(row.marks[span] ?? ''))
  const count = (line: string) => lines.filter((own) => own === line).length
  const numbers = [count('keeper'), count('back'), count('middle'), count('forward')]
  return { text: numbers.join('-'), count: numbers.reduce((sum, number) => sum + number, 0) }
}

export function withoutMatchNames(draft: MatchDraft): MatchDraft {
  return { ...draft, guests: draft.guests.map((guest) => ({ ...guest, name: '' })) }
}
