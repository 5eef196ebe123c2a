import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { accept, InvariantError, type Result, refuse } from '#common/result'
import { listDeedsOn, recordAudit } from '#data/audit'
import { getClub } from '#data/clubs'
import type { ClubTx } from '#data/in-club'
import { listPlayers } from '#data/players'
import { changeSession, type Session } from '#data/sessions'
import { checkMatch } from '#match/checks/check-match'
import { type Goals, mostGoals } from '#match/goals'
import { whyTooLong } from '#pitch/too-long'
import { type Done, saved } from '#server/action'
import { loadTappedMatch, registerOfMatch, type TappedMatch } from '#server/match-book'
import { recordMatch } from '#server/record-match'
import { problemsOfRegister } from '#server/session-register'
import { bringBookUpToDate } from '#server/session-writing'
import { writeFromPitchDeed } from '#server/tapped-writings'
import { todayOf } from '#server/today'
import type { ConfirmInput } from '#server/whistle-input'
import { whyNotWritable } from '#server/why-not-writable'
import { checkLineOverlap } from '#squad/checks/line-overlap'
import type { PlayerId } from '#squad/player'
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
  const problems = await whyNotWritten(tx, { tapped, register, input })
  if (problems.length > 0) return refuse(...problems)
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

type Deciding = {
  readonly tapped: TappedMatch
  readonly register: readonly RegisterLine[]
  readonly input: Confirming['input']
}

/** Every reason why what was tapped cannot be written now. */
async function whyNotWritten(tx: ClubTx, { tapped, register, input }: Deciding): Promise<readonly Problem[]> {
  const { book, before, typed, cursor } = tapped
  const say = (message: string): readonly Problem[] => [{ path: '', message }]
  if (input.cursor !== null && input.cursor !== cursor)
    return say('More was tapped since this page was opened. It stands below now: look at it, then write.')
  if (book.spells.length === 0)
    return say('No kick-off was tapped in this match: there is nothing to write. Type in what was played.')
  const tooLong = whyTooLong(book, 'match')
  if (tooLong) return say(tooLong)
  if (typed && !input.overTyped) {
    const message =
      'Somebody typed this match in, or corrected it, by hand. Say below whether what was tapped is to stand in its place.'
    return [{ path: 'overTyped', message }]
  }
  const ids = new Set([...before.register, ...register].map(({ playerId }) => playerId))
  const names = new Map((await listPlayers(tx, [...ids])).map(({ id, name }) => [id, name]))
  const nameOf = (playerId: PlayerId) => names.get(playerId) ?? 'Somebody'
  const twice = new Set(
    checkLineOverlap(register).flatMap((fault) =>
      fault.rule === 'linesOverlap' ? [register[fault.line]?.playerId ?? ''] : [],
    ),
  )
  // What was tapped always comes to a match that can be; only a guest joined to somebody who was there too cannot.
  if (twice.size > 0)
    return [...twice].flatMap((id) =>
      say(
        `${nameOf(id)} was tapped as here at the same time as the guest who was joined to ${nameOf(id)}. Take one of the two back at the pitch page, or type the match in by hand.`,
      ),
    )
  const ofRegister = problemsOfRegister(
    { before: before.register, after: register },
    { takenBack: input.takenBack, nameOf },
  )
  if (ofRegister.length > 0) return ofRegister.map(({ message }) => ({ path: 'takenBack', message }))
  const presence = register.filter(({ state }) => state === 'here')
  const faults = checkMatch({ periods: book.periods, register: presence, spells: book.spells })
  if (faults.length > 0)
    throw new InvariantError(`taps of ${before.session.id} came to ${JSON.stringify(faults.slice(0, 3))}`)
  return []
}
