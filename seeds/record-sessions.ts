import type { Author } from '#data/author'
import type { ClubTx } from '#data/in-club'
import { recordSpells } from '#data/match-spells'
import { recordRegister } from '#data/register-lines'
import { cancelSession, markWritten, recordSessions } from '#data/sessions'
import { recordEvents } from '#data/turn-events'
import type { DemoSession } from './demo-session'

/** Enters sessions, and then what was written of each, by whom and when, as their coaches would have. */
export async function recordDemoSessions(tx: ClubTx, sessions: readonly DemoSession[]): Promise<void> {
  await recordSessions(
    tx,
    sessions.map((session) => ({
      ...session,
      periods: session.kind === 'match' ? session.periods : null,
      code: null,
    })),
  )
  for (const session of sessions) {
    if (session.cancelledAt !== null) {
      const by = { personId: session.ledById, at: new Date(session.cancelledAt) }
      await cancelSession(tx, { sessionId: session.id, by })
    } else if (session.writtenAt !== null) {
      await recordWritten(tx, session, { personId: session.writtenById, at: new Date(session.writtenAt) })
    }
  }
}

async function recordWritten(tx: ClubTx, session: DemoSession, by: Author): Promise<void> {
  const { id: sessionId, register, events, spells, written } = session
  await recordRegister(tx, { sessionId, lines: register, by })
  if (session.kind === 'practice') await recordEvents(tx, { practices: [{ sessionId, events }], by })
  else await recordSpells(tx, { matches: [{ sessionId, spells }], by })
  await markWritten(tx, { sessionIds: [sessionId], written, by })
}
