import 'server-only'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { recordGuests } from '#data/guests'
import type { ClubTx } from '#data/in-club'
import { recordSpells, voidSpells } from '#data/match-spells'
import { changeSession, markWritten, type Session } from '#data/sessions'
import { loadMatch, type WrittenMatch } from '#data/written-sessions'
import { matchEntrySentence } from '#match/entry-sentence'
import type { Spell } from '#match/match'
import { type DecidedMatch, decideMatch, type MatchEntry } from '#match/match-entry'
import { type Cast, castOf, underBookIds } from '#server/session-cast'
import type { MatchInput } from '#server/session-input'
import { problemsOfRegister, writeRegister } from '#server/session-register'

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
  if (JSON.stringify(session.periods) !== JSON.stringify(input.grid.periods)) {
    await changeSession(tx, session.id, { periods: input.grid.periods })
  }
  const at = { sessionId: session.id, by }
  const registered = await writeRegister(tx, { before: before.register, after: decided.register }, at)
  const changed = playersWithOtherSpells(before.match.spells, decided.spells)
  const voided = changed.length > 0 ? await voidSpells(tx, { ...at, playerIds: changed }) : 0
  const spells = decided.spells.filter(({ playerId }) => changed.includes(playerId))
  await recordSpells(tx, { matches: [{ sessionId: session.id, spells }], by })
  const written =
    decided.spells.length === 0
      ? 'notWritten'
      : session.written === 'notWritten'
        ? 'typedLater'
        : session.written
  if (written !== session.written) await markWritten(tx, { sessionIds: [session.id], written, by })
  const detail = { written, spells: spells.length, voided, registered, guests: decision.cast.guests.length }
  await recordAudit(tx, { action: 'writeMatch', objectKind: 'session', objectId: session.id, detail, by })
}

function playersWithOtherSpells(before: readonly Spell[], after: readonly Spell[]): readonly string[] {
  const textOf = (spells: readonly Spell[], id: string) =>
    spells
      .filter(({ playerId }) => playerId === id)
      .map(({ line, start, end }) => `${start}-${end} ${line}`)
      .sort()
      .join(',')
  const ids = new Set([...before, ...after].map(({ playerId }) => playerId))
  return [...ids].filter((id) => textOf(before, id) !== textOf(after, id))
}
