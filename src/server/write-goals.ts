import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import type { Day } from '#common/time'
import { recordAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { changeSession, type Session } from '#data/sessions'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import type { GoalsInput } from '#server/session-input'
import { openForWriting } from '#server/session-writing'

/** The goals of a match, where the club counts them; both left empty take them out. @throws AppError as `openForWriting`. */
export async function writeGoalsOf(
  viewer: Viewer,
  input: GoalsInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  return inClub(viewer.clubId, async (tx) => {
    const session = await openForWriting(tx, viewer, input)
    const { club, today } = await loadClubDay(tx, now)
    const problem = problemOfGoals(input, { session, today, countsGoals: club.countsGoals })
    if (problem) return refuse(problem)
    const { ours, theirs } = input
    const goals = ours === null || theirs === null ? null : { ours, theirs }
    await changeSession(tx, session.id, { goals })
    const by = { personId: viewer.personId, at: now }
    await recordAudit(tx, { action: 'writeGoals', objectKind: 'session', objectId: session.id, by })
    return saved(goals ? 'Saved.' : 'Saved. No goals are written for this match.')
  })
}

/** Why goals cannot be written so, or null. */
export function problemOfGoals(
  { ours, theirs }: Pick<GoalsInput, 'ours' | 'theirs'>,
  known: { readonly session: Session; readonly today: Day; readonly countsGoals: boolean },
): Problem | null {
  const { session, today, countsGoals } = known
  if (!countsGoals) return { path: '', message: 'The club does not count goals. It says so on its page.' }
  if (session.kind !== 'match') return { path: '', message: 'This is a practice. Only a match has goals.' }
  if (session.isCancelled) return { path: '', message: 'This match was cancelled, so it has no goals.' }
  if (session.day > today)
    return { path: '', message: 'This match is still to come. Write its goals when it has been played.' }
  if (ours === null && theirs !== null) return { path: 'ours', message: 'Write both numbers, or neither.' }
  if (ours !== null && theirs === null) return { path: 'theirs', message: 'Write both numbers, or neither.' }
  return null
}
