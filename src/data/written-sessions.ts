import 'server-only'
import { AppError } from '#common/app-error'
import type { ClubTx } from '#data/in-club'
import { listSpellsOf } from '#data/match-spells'
import { listRegisters } from '#data/register-lines'
import { getSession, listSessions, type Session, type SquadDays } from '#data/sessions'
import { listEventsOf } from '#data/turn-events'
import type { Match } from '#match/match'
import type { PracticeEvent } from '#practice/event'
import type { Practice } from '#practice/practice'
import { type Passed, replayPractice } from '#practice/replay'
import type { PresenceLine } from '#squad/presence'
import type { RegisterLine } from '#squad/register'

/** A session with all that was written of it. `register` holds every state; the record's own only who could be given a turn. */
export type WrittenPractice = {
  readonly kind: 'practice'
  readonly session: Session
  readonly register: readonly RegisterLine[]
  readonly events: readonly PracticeEvent[]
  readonly practice: Practice
  readonly passes: readonly Passed[]
}
export type WrittenMatch = {
  readonly kind: 'match'
  readonly session: Session
  readonly register: readonly RegisterLine[]
  readonly match: Match
}
export type WrittenSession = WrittenPractice | WrittenMatch

/** All that was written of these sessions, in their order: three queries, whatever their number. */
export async function loadWritten(
  tx: ClubTx,
  sessions: readonly Session[],
): Promise<readonly WrittenSession[]> {
  const idsOf = (kind: Session['kind']) => sessions.filter((one) => one.kind === kind).map(({ id }) => id)
  const registers = await listRegisters(
    tx,
    sessions.map(({ id }) => id),
  )
  const events = await listEventsOf(tx, idsOf('practice'))
  const spells = await listSpellsOf(tx, idsOf('match'))
  return sessions.map((session): WrittenSession => {
    const { id, day } = session
    const register = registers.get(id) ?? []
    if (session.kind === 'match') {
      const match = {
        id,
        day,
        periods: session.periods ?? [],
        register: register.flatMap(presenceOf),
        spells: spells.get(id) ?? [],
      }
      return { kind: 'match', session, register, match }
    }
    const written = events.get(id) ?? []
    const { turns, passes } = replayPractice(written)
    const practice = {
      id,
      day,
      lengthSeconds: session.lengthSeconds,
      register: register.flatMap(presenceOf),
      turns,
    }
    return { kind: 'practice', session, register, events: written, practice, passes }
  })
}

function presenceOf({ playerId, from, to, state }: RegisterLine): readonly PresenceLine[] {
  return state === 'here' ? [{ playerId, from, to }] : []
}

/** Of a squad's sessions that were not cancelled, in order of time: four queries, whatever their number. */
export async function loadSquadWritten(tx: ClubTx, at: SquadDays): Promise<readonly WrittenSession[]> {
  return loadWritten(tx, await listSessions(tx, { ...at, withCancelled: false }))
}

/** @throws AppError `notFound` when there is no such session, or it is a match. */
export async function loadPractice(tx: ClubTx, sessionId: string): Promise<WrittenPractice> {
  const [written] = await loadWritten(tx, [await getSession(tx, sessionId)])
  if (written?.kind !== 'practice') throw new AppError('notFound', `session ${sessionId} is no practice`)
  return written
}

/** @throws AppError `notFound` when there is no such session, or it is a practice. */
export async function loadMatch(tx: ClubTx, sessionId: string): Promise<WrittenMatch> {
  const [written] = await loadWritten(tx, [await getSession(tx, sessionId)])
  if (written?.kind !== 'match') throw new AppError('notFound', `session ${sessionId} is no match`)
  return written
}
