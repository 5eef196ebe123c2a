import { accept, type Result, refuse } from '#common/result'
import type { Seconds } from '#common/time'
import { checkMatch } from '#match/checks/check-match'
import type { MatchFault } from '#match/checks/match-fault'
import type { LineGrid } from '#match/line-grid'
import type { Spell } from '#match/match'
import { type LineGridRefusal, spellsOfGrid } from '#match/spells-of-grid'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import { afterTheEnd, linesOfEntries, type RegisterEntry } from '#squad/register-segments'

/** A match as it was typed in. */
export type MatchEntry = { readonly grid: LineGrid; readonly register: readonly RegisterEntry[] }

export type MatchEntryRefusal =
  | { readonly of: 'grid'; readonly refusal: LineGridRefusal }
  | { readonly of: 'match'; readonly fault: MatchFault }
  | { readonly of: 'register'; readonly playerId: PlayerId; readonly at: Seconds; readonly end: Seconds }
  | { readonly of: 'periods' }

export type DecidedMatch = { readonly register: readonly RegisterLine[]; readonly spells: readonly Spell[] }

/** The end of a match: of its last period. */
export function endOfMatch(grid: Pick<LineGrid, 'periods'>): Seconds {
  return Math.max(0, ...grid.periods.map((period) => period.end))
}

/** Everything that would be written of a typed-in match, or every reason why not. */
export function decideMatch(entry: MatchEntry): Result<DecidedMatch, MatchEntryRefusal> {
  const { grid } = entry
  const end = endOfMatch(grid)
  if (grid.periods.length === 0) return refuse({ of: 'periods' })
  const register = linesOfEntries(entry.register, end)
  const presence = register.filter((line) => line.state === 'here')
  const periodFaults = checkMatch({ periods: grid.periods, register: [], spells: [] })
  if (periodFaults.length > 0)
    return refuse(...periodFaults.map((fault) => ({ of: 'match' as const, fault })))
  const late = afterTheEnd(entry.register, end).map(
    (own): MatchEntryRefusal => ({ of: 'register', ...own, end }),
  )
  const spells = spellsOfGrid(grid, presence)
  const gridRefusals = spells.ok
    ? []
    : spells.reasons.map((refusal): MatchEntryRefusal => ({ of: 'grid', refusal }))
  if (!spells.ok || late.length > 0) return refuse(...late, ...gridRefusals)
  const faults = checkMatch({ periods: grid.periods, register: presence, spells: spells.value })
  if (faults.length > 0) return refuse(...faults.map((fault) => ({ of: 'match' as const, fault })))
  return accept({ register, spells: spells.value })
}
