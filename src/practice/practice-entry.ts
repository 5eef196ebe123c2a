import { accept, type Result, refuse } from '#common/result'
import type { Seconds } from '#common/time'
import { checkPractice } from '#practice/checks/check-practice'
import type { PracticeFault } from '#practice/checks/practice-fault'
import type { PracticeGrid } from '#practice/grid'
import type { GridRefusal } from '#practice/grid-refusal'
import { endOfColumns } from '#practice/grid-times'
import { type ColumnOutcome, outcomesOfGrid } from '#practice/grid-turns'
import type { Passed } from '#practice/replay'
import type { Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'
import type { PresenceLine } from '#squad/presence'
import type { RegisterLine } from '#squad/register'
import { afterTheEnd, linesOfEntries, type RegisterEntry } from '#squad/register-segments'

/** A practice as it was typed in. */
export type PracticeEntry = {
  readonly grid: PracticeGrid
  readonly register: readonly RegisterEntry[]
  /** Whole length; null when nobody wrote it down. */
  readonly lengthSeconds: Seconds | null
}

export type EntryRefusal =
  | { readonly of: 'grid'; readonly refusal: GridRefusal }
  | { readonly of: 'practice'; readonly fault: PracticeFault; readonly column: number }
  | { readonly of: 'register'; readonly playerId: PlayerId; readonly at: Seconds; readonly end: Seconds }

/** What a typed-in practice comes to, ready to be written. */
export type DecidedPractice = {
  readonly register: readonly RegisterLine[]
  readonly turns: readonly Turn[]
  readonly passes: readonly Passed[]
  readonly outcomes: readonly ColumnOutcome[]
}

/** Long enough for lines of a register when neither a length nor any turn says how long the practice was. */
const assumedLengthSeconds = 3600

/** The end of the session for its register: its stated length, or the end of the last turn where that is later. */
export function endOfEntry({ grid, lengthSeconds }: Pick<PracticeEntry, 'grid' | 'lengthSeconds'>): Seconds {
  return Math.max(lengthSeconds ?? 0, endOfColumns(grid.columns)) || assumedLengthSeconds
}

/** The lines of who could be given a turn, of an entry's register. */
export function presenceOfEntry(entry: PracticeEntry): readonly PresenceLine[] {
  return linesOfEntries(entry.register, endOfEntry(entry)).filter((line) => line.state === 'here')
}

/**
 * Everything that would be written of a typed-in practice, or every reason why not. The page asks before it sends, and
 * the server asks again before it writes.
 */
export function decidePractice(entry: PracticeEntry): Result<DecidedPractice, EntryRefusal> {
  const end = endOfEntry(entry)
  const register = linesOfEntries(entry.register, end)
  const presence = register.filter((line) => line.state === 'here')
  const outcomes = outcomesOfGrid(entry.grid, presence)
  const late = afterTheEnd(entry.register, end).map((own): EntryRefusal => ({ of: 'register', ...own, end }))
  const gridRefusals = outcomes.flatMap((outcome) =>
    outcome.refusals.map((refusal): EntryRefusal => ({ of: 'grid', refusal })),
  )
  if (late.length + gridRefusals.length > 0) return refuse(...late, ...gridRefusals)
  const turns = outcomes.flatMap((outcome) => outcome.turns)
  const columnOfTurn = outcomes.flatMap((outcome, column) => outcome.turns.map(() => column))
  const faults = checkPractice({ lengthSeconds: entry.lengthSeconds, register: presence, turns })
  if (faults.length > 0) {
    return refuse(
      ...faults.map(
        (fault): EntryRefusal => ({ of: 'practice', fault, column: columnOfTurn[fault.turn] ?? 0 }),
      ),
    )
  }
  return accept({ register, turns, passes: outcomes.flatMap((outcome) => outcome.passes), outcomes })
}
