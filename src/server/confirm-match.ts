import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { accept, InvariantError, type Result, refuse } from '#common/result'
import { listDeedsOn, recordAudit } from '#data/audit'
import { getClub } from '#data/clubs'
import type { ClubTx } from '#data/in-club'
import { changeSession, type Session } from '#data/sessions'
import { checkMatch } from '#match/checks/check-match'
import { type Goals, mostGoals } from '#match/goals'
import { type Done, saved } from '#server/action'
import { loadTappedMatch, registerOfMatch, type TappedMatch } from '#server/match-book'
import { recordMatch } from '#server/record-match'
import { bringBookUpToDate } from '#server/session-writing'
import { writeFromPitchDeed } from '#server/tapped-writings'
import { todayOf } from '#server/today'
import type { ConfirmInput } from '#server/whistle-input'
import { whyNotWritable } from '#server/why-not-writable'
import { whyTapsNotWritten } from '#server/why-taps-not-written'
import type { RegisterLine } from '#squad/register'

type Confirming = {
  readonly session: Session
  readonly input: Pick<ConfirmInput, 'cursor' | 'overTyped' | 'takenBack'>
  readonly now: Date
}

/**
 * Writes a match into the book as it was tapped, inside a transaction in which the session is open for writing: only
 * where the book says otherwise yet, so that writing again writes nothing. What somebody typed meanwhile is not written
 * over unless the coach says so.
 */
export async function writeTappedMatch(
  tx: ClubTx,
  viewer: Viewer,
  { session, input, now }: Confirming,
): Promise<Result<Done, Problem>> {
  const club = await getClub(tx)
  const closed = whyNotWritable(session, todayOf(club, now))
  if (closed) return refuse({ path: '', message: closed })
  const tapped = await loadTappedMatch(tx, session)
  const register = registerOfMatch(tapped)
  const own = tapped.book.spells.length === 0 ? [nothingPlayed] : []
  const problems = await whyTapsNotWritten(tx, { kind: 'match', tapped, register, input, own })
  if (problems.length > 0) return refuse(...problems)
  mustBeAMatch(tapped, register)
  const goals = club.countsGoals && !(await areGoalsTyped(tx, tapped)) ? tapped.book.goals : null
  const tooMany = whyTooManyGoals(goals)
  if (tooMany) return refuse({ path: '', message: tooMany })
  const by = { personId: viewer.personId, at: now }
  const { book, before } = tapped
  const match = { periods: book.periods, register, spells: book.spells, written: book.written }
  const done = await recordMatch(tx, match, { session, before, by })
  const areGoalsNew = goals !== null && JSON.stringify(goals) !== JSON.stringify(session.goals)
  if (areGoalsNew) await changeSession(tx, session.id, { goals })
  const isNew = done.isFrameNew || done.spells + done.voided + done.registered > 0 || areGoalsNew
  if (!isNew && tapped.lastWrite?.upTo === tapped.cursor)
    return saved('Nothing new: all of this stands in the book already.')
  await recordAudit(tx, {
    action: writeFromPitchDeed,
    objectKind: 'session',
    objectId: session.id,
    detail: {
      upTo: tapped.cursor,
      written: book.written,
      spells: done.spells,
      voided: done.voided,
      registered: done.registered,
      guests: book.guests.length,
    },
    by,
  })
  if (isNew) await bringBookUpToDate(tx, session, now)
  return accept({ message: 'Written. The season book has been brought up to date.' })
}

const nothingPlayed: Problem = {
  path: '',
  message: 'No kick-off was tapped in this match: there is nothing to write. Type in what was played.',
}

/** @throws InvariantError when taps came to a match that cannot be. */
function mustBeAMatch({ book, before }: TappedMatch, register: readonly RegisterLine[]): void {
  const presence = register.filter(({ state }) => state === 'here')
  const faults = checkMatch({ periods: book.periods, register: presence, spells: book.spells })
  if (faults.length > 0)
    throw new InvariantError(`taps of ${before.session.id} came to ${JSON.stringify(faults.slice(0, 3))}`)
}

/** Goals that somebody typed, or took from a file, before the taps were written stand; those typed since do so too. */
async function areGoalsTyped(tx: ClubTx, { before: { session }, lastWrite }: TappedMatch): Promise<boolean> {
  if (lastWrite === null && session.goals !== null) return true
  return (await listDeedsOn(tx, { objectId: session.id, actions: ['writeGoals'] })).length > 0
}

/** Why goals that were tapped cannot be kept; null when they can. */
function whyTooManyGoals(goals: Goals | null): string | null {
  const most = Math.max(goals?.ours ?? 0, goals?.theirs ?? 0)
  return most <= mostGoals
    ? null
    : `${most} goals of one side were tapped, and ${mostGoals} at most are kept. Take those back at the pitch page that were none.`
}
