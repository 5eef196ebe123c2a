import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { listAccounts } from '#data/accounts'
import type { ClubTx } from '#data/in-club'
import { inClub } from '#data/in-club'
import { listPeople } from '#data/people'
import { listSquadPlayers } from '#data/players'
import { listPlanned } from '#data/session-plans'
import { listSquadCoaches } from '#data/squad-coaches'
import { getSquad } from '#data/squads'
import { listThemes } from '#data/themes'
import {
  type Corrected,
  type Hand,
  listCorrectedLines,
  listCorrectedSpells,
  listHandsOfEvents,
} from '#data/written-history'
import { loadWritten, type WrittenSession } from '#data/written-sessions'
import { namesApart } from '#fairness/book/names-apart'
import type { Spell } from '#match/match'
import type { PracticeEvent } from '#practice/event'
import { loadClubDay } from '#server/club-day'
import { loadFrame } from '#server/page-frame'
import { coverNameOf } from '#server/session-list-views'
import { getSessionOfSquad } from '#server/session-of-squad'
import { countTapsWaiting } from '#server/taps-waiting'
import type { RegisterLine } from '#squad/register'
import type { SquadId } from '#squad/squad'

/** An event of a practice with its hands; `corrected` null: it stands. Voids are told with what they void. */
export type EventOfHistory = {
  readonly event: Exclude<PracticeEvent, { kind: 'void' }>
  readonly written: Hand
  readonly corrected: Hand | null
}

/** Everything that is written of one session, corrections too, and what it came to. */
export async function loadSessionPage(
  viewer: Viewer,
  { squadId, sessionId }: { readonly squadId: SquadId; readonly sessionId: string },
) {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'seeSquad', { kind: 'squad', squadId })
    const session = await getSessionOfSquad(tx, { squadId, sessionId })
    const [written] = await loadWritten(tx, [session])
    if (!written) throw new AppError('notFound', `no session ${sessionId}`)
    const players = namesApart(await listSquadPlayers(tx, squadId))
    const accounts = await listAccounts(tx, { squadId, from: session.day, to: session.day })
    const people = new Map((await listPeople(tx)).map(({ id, name }) => [id, name]))
    const { club, today } = await loadClubDay(tx)
    const mayWrite = may(viewer, 'writeSession', { kind: 'squad', squadId })
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad: await getSquad(tx, squadId),
      session,
      isToCome: session.day > today,
      isPlanned: (await listPlanned(tx, [sessionId])).has(sessionId),
      timeZone: club.timeZone,
      countsGoals: club.countsGoals,
      mayWrite,
      mayWriteGoals:
        mayWrite &&
        club.countsGoals &&
        session.kind === 'match' &&
        session.day <= today &&
        !session.isCancelled,
      coveredByName: coverNameOf(session, { coaches: await listSquadCoaches(tx, squadId), names: people }),
      writtenByName: session.writtenById ? (people.get(session.writtenById) ?? null) : null,
      players: players.map(({ id, name }) => ({ id, name })),
      themes: (await listThemes(tx)).map(({ id, name }) => ({ id, name })),
      written,
      account: accounts.find((account) => account.sessionId === sessionId) ?? null,
      history: await historyOf(tx, written),
      tapsWaiting: await countTapsWaiting(tx, sessionId),
    }
  })
}

export type SessionHistory = {
  readonly events: readonly EventOfHistory[]
  readonly correctedLines: readonly Corrected<RegisterLine>[]
  readonly correctedSpells: readonly Corrected<Spell>[]
}

async function historyOf(tx: ClubTx, written: WrittenSession): Promise<SessionHistory> {
  const { id } = written.session
  const correctedLines = await listCorrectedLines(tx, id)
  if (written.kind === 'match')
    return { events: [], correctedLines, correctedSpells: await listCorrectedSpells(tx, id) }
  return {
    events: eventsOf(written.events, await listHandsOfEvents(tx, id)),
    correctedLines,
    correctedSpells: [],
  }
}

function eventsOf(
  events: readonly PracticeEvent[],
  hands: ReadonlyMap<string, Hand>,
): readonly EventOfHistory[] {
  const handOf = (eventId: string): Hand => hands.get(eventId) ?? { byName: null, at: new Date(0) }
  const voids = new Map(events.flatMap((event) => (event.kind === 'void' ? [[event.voids, event.id]] : [])))
  return events.flatMap((event) => {
    if (event.kind === 'void') return []
    const voidId = voids.get(event.id)
    return [{ event, written: handOf(event.id), corrected: voidId ? handOf(voidId) : null }]
  })
}
