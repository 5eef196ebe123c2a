import 'server-only'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { recordGuests } from '#data/guests'
import type { ClubTx } from '#data/in-club'
import type { Session } from '#data/sessions'
import { loadMatch, type WrittenMatch } from '#data/written-sessions'
import { matchEntrySentence } from '#match/entry-sentence'
import { type DecidedMatch, decideMatch, type MatchEntry } from '#match/match-entry'
import { recordMatch } from '#server/record-match'
import { type Cast, castOf, underBookIds } from '#server/session-cast'
import type { MatchInput } from '#server/session-input'
import { problemsOfRegister } from '#server/session-register'
import type { Written } from '#squad/written'

type Decision = { readonly decided: DecidedMatch; readonly cast: Cast; readonly before: WrittenMatch }

/** Everything a typed-in match would write, or every reason why not; nothing is written yet. */
export async function decideMatchWriting(
  tx: ClubTx,
  session: Session,
  input: MatchInput,
): Promise<Result<Decision, Problem>> {
  if (session.kind !== 'match') throw new AppError('notFound', `session ${session.id} is no match`)
  const playerIds = [...input.grid.rows, ...input.register].map(({ playerId }) => playerId)
  const cast = await castOf(tx, session.squadId, { guests: input.guests, playerIds })
  if (!cast.ok) return cast
  const entry: MatchEntry = {
    grid: { ...input.grid, rows: underBookIds(input.grid.rows, cast.value) },
    register: underBookIds(input.register, cast.value),
  }
  const decided = decideMatch(entry)
  if (!decided.ok) {
    const parts = { grid: entry.grid, nameOf: cast.value.nameOf }
    return refuse(
      ...decided.reasons.map((reason) => ({ path: '', message: matchEntrySentence(reason, parts) })),
    )
  }
  const before = await loadMatch(tx, session.id)
  const register = { before: before.register, after: decided.value.register }
  const problems = problemsOfRegister(register, { takenBack: input.takenBack, nameOf: cast.value.nameOf })
  return problems.length > 0
    ? refuse(...problems)
    : accept({ decided: decided.value, cast: cast.value, before })
}

/** Writes what was decided, with its audit row. Spells of players whose spells changed are voided and written anew. */
export async function saveMatchWriting(
  tx: ClubTx,
  viewer: Viewer,
  { session, input, now, decision }: { session: Session; input: MatchInput; now: Date; decision: Decision },
): Promise<void> {
  const by = { personId: viewer.personId, at: now }
  const { decided, before } = decision
  await recordGuests(tx, { guests: decision.cast.guests, since: session.day })
  const written: Written =
    decided.spells.length === 0
      ? 'notWritten'
      : session.written === 'notWritten'
        ? 'typedLater'
        : session.written
  const match = { periods: input.grid.periods, register: decided.register, spells: decided.spells, written }
  const { spells, voided, registered } = await recordMatch(tx, match, { session, before, by })
  const detail = { written, spells, voided, registered, guests: decision.cast.guests.length }
  await recordAudit(tx, { action: 'writeMatch', objectKind: 'session', objectId: session.id, detail, by })
}
