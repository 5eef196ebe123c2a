import type { Day } from '#common/time'
import type { RowAnswer, RowAnswers } from '#exchange/players/answer'
import { indexPlayers, type KnownPlayer, matchPlayer, type PlayerIndex } from '#exchange/players/match-player'
import { type Doubling, findDoubled, type NumberedEntry } from '#exchange/roster/doubled-rows'
import { knownPlayerChanges } from '#exchange/roster/known-player-changes'
import type { RosterEntry } from '#exchange/roster/roster-entry'
import type { MemberDays, RosterOutcome, RosterPlan } from '#exchange/roster/roster-plan'
import type { RowReading } from '#exchange/table/row-reading'

export type RosterPlanning = {
  readonly known: readonly KnownPlayer[]
  readonly answers: RowAnswers
  /** For rows that do not say since when. */
  readonly defaultFirstDay: Day
}

/** What the rows of a roster do to a squad's book, row by row; nothing is written. */
export function planRoster(rows: readonly RowReading<RosterEntry>[], planning: RosterPlanning): RosterPlan {
  const index = indexPlayers(planning.known)
  const entries = rows.flatMap((row): NumberedEntry[] =>
    row.result.kind === 'understood' && planning.answers.get(row.line)?.kind !== 'leaveOut'
      ? [{ line: row.line, entry: row.result.entry }]
      : [],
  )
  const found = findDoubled(entries)
  const doublings = new Map(entries.map(({ line }, at) => [line, found[at] ?? { kind: 'first' as const }]))
  const plan = rows.map((row) => ({ line: row.line, outcome: outcomeOf(row, doublings, index, planning) }))
  return askAboutShared(plan, entries, planning)
}

function outcomeOf(
  row: RowReading<RosterEntry>,
  doublings: ReadonlyMap<number, Doubling>,
  index: PlayerIndex,
  planning: RosterPlanning,
): RosterOutcome {
  const answer = planning.answers.get(row.line)
  if (answer?.kind === 'leaveOut') return { kind: 'leftOut' }
  if (row.result.kind !== 'understood') return row.result
  const { entry } = row.result
  const doubling = doublings.get(row.line) ?? { kind: 'first' }
  if (doubling.kind === 'doubled') return { kind: 'doubled', line: doubling.line }
  if (doubling.kind === 'codeTaken') return { kind: 'problem', problems: [codeTaken(entry, doubling.line)] }
  if (doubling.kind === 'unclear' && !answer) {
    return { kind: 'question', question: { why: 'sameNameTwice', line: doubling.line, candidates: [] } }
  }
  if (answer) return answered(entry, answer, index, planning)
  const match = matchPlayer(index, entry)
  if (match.kind === 'question') return { kind: 'question', question: match }
  if (match.kind === 'one') return knownOutcome(match.player, entry, planning)
  const days = daysOf(entry, planning)
  return doubling.kind === 'again'
    ? { kind: 'again', line: doubling.line, days }
    : newOutcome(entry, planning)
}

function answered(
  entry: RosterEntry,
  answer: RowAnswer,
  index: PlayerIndex,
  planning: RosterPlanning,
): RosterOutcome {
  if (answer.kind !== 'player') {
    const holder = entry.code === null ? undefined : index.byKey.get(entry.code)
    return holder ? { kind: 'problem', problems: [codeInBook(entry, holder)] } : newOutcome(entry, planning)
  }
  const player = planning.known.find((p) => p.id === answer.playerId)
  return player
    ? knownOutcome(player, entry, planning)
    : {
        kind: 'problem',
        problems: ['The player chosen for this row is no longer in the book. Choose again.'],
      }
}

function newOutcome(entry: RosterEntry, planning: RosterPlanning): RosterOutcome {
  const days = daysOf(entry, planning)
  return days.lastDay !== null && days.lastDay < days.firstDay
    ? {
        kind: 'problem',
        problems: [`The last day, ${days.lastDay}, is before the day of joining, ${days.firstDay}.`],
      }
    : { kind: 'new', entry, days }
}

function knownOutcome(player: KnownPlayer, entry: RosterEntry, planning: RosterPlanning): RosterOutcome {
  return {
    kind: 'known',
    playerId: player.id,
    ...knownPlayerChanges(player, entry, planning.defaultFirstDay),
  }
}

function daysOf(entry: RosterEntry, planning: RosterPlanning): MemberDays {
  return { firstDay: entry.firstDay ?? planning.defaultFirstDay, lastDay: entry.lastDay }
}

function codeInBook(entry: RosterEntry, holder: KnownPlayer): string {
  return `The code ${entry.code} is ${holder.name}'s in the book. A new player needs another one, or none.`
}

function codeTaken(entry: RosterEntry, line: number): string {
  return `The code ${entry.code} stands at another name in line ${line}. A code belongs to one player; correct one of the two.`
}

/** Two rows that both came out as one player of the book, and are not the same player by code: ask for each of them. */
function askAboutShared(
  plan: RosterPlan,
  entries: readonly NumberedEntry[],
  planning: RosterPlanning,
): RosterPlan {
  const codes = new Map(entries.map(({ line, entry }) => [line, entry.code]))
  const rowsOf = new Map<string, number[]>()
  for (const { line, outcome } of plan) {
    if (outcome.kind === 'known')
      rowsOf.set(outcome.playerId, [...(rowsOf.get(outcome.playerId) ?? []), line])
  }
  return plan.map((row) => {
    if (row.outcome.kind !== 'known') return row
    const { playerId } = row.outcome
    const lines = rowsOf.get(playerId) ?? []
    const code = codes.get(row.line) ?? null
    if (lines.length < 2 || (code !== null && lines.every((line) => codes.get(line) === code))) return row
    const candidates = planning.known.filter((player) => player.id === playerId)
    return { line: row.line, outcome: { kind: 'question', question: { why: 'oneForTwoRows', candidates } } }
  })
}
