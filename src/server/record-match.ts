import 'server-only'
import type { Author } from '#data/author'
import type { ClubTx } from '#data/in-club'
import { recordSpells, voidSpells } from '#data/match-spells'
import { changeSession, markWritten, type Session } from '#data/sessions'
import type { WrittenMatch } from '#data/written-sessions'
import type { Period, Spell } from '#match/match'
import { forgetMatchDayOf } from '#server/forget-today'
import { writeRegister } from '#server/session-register'
import type { RegisterLine } from '#squad/register'
import type { Written } from '#squad/written'

export type MatchToRecord = {
  readonly periods: readonly Period[]
  readonly register: readonly RegisterLine[]
  readonly spells: readonly Spell[]
  readonly written: Written
}

/** What of a match was written anew; all nothing: the book said the same. */
export type MatchRecorded = {
  readonly spells: number
  readonly voided: number
  readonly registered: number
  readonly isFrameNew: boolean
}

/**
 * Writes a match where the book says otherwise: spells of players whose spells changed are voided and written anew. Its
 * audit row is the caller's.
 */
export async function recordMatch(
  tx: ClubTx,
  match: MatchToRecord,
  { session, before, by }: { readonly session: Session; readonly before: WrittenMatch; readonly by: Author },
): Promise<MatchRecorded> {
  const arePeriodsNew = JSON.stringify(session.periods) !== JSON.stringify(match.periods)
  if (arePeriodsNew) await changeSession(tx, session.id, { periods: match.periods })
  const at = { sessionId: session.id, by }
  const registered = await writeRegister(tx, { before: before.register, after: match.register }, at)
  const changed = playersWithOtherSpells(before.match.spells, match.spells)
  const voided = changed.length > 0 ? await voidSpells(tx, { ...at, playerIds: changed }) : 0
  const spells = match.spells.filter(({ playerId }) => changed.includes(playerId))
  await recordSpells(tx, { matches: [{ sessionId: session.id, spells }], by })
  const isWayNew = match.written !== session.written
  if (isWayNew) await markWritten(tx, { sessionIds: [session.id], written: match.written, by })
  if (match.written !== 'notWritten') await forgetMatchDayOf(tx, session.id, by.at)
  return { spells: spells.length, voided, registered, isFrameNew: arePeriodsNew || isWayNew }
}

export function playersWithOtherSpells(before: readonly Spell[], after: readonly Spell[]): readonly string[] {
  const textOf = (spells: readonly Spell[], id: string) =>
    spells
      .filter(({ playerId }) => playerId === id)
      .map(({ line, start, end }) => `${start}-${end} ${line}`)
      .sort()
      .join(',')
  const ids = new Set([...before, ...after].map(({ playerId }) => playerId))
  return [...ids].filter((id) => textOf(before, id) !== textOf(after, id))
}
