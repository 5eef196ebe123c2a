'use server'

import { demand } from '#access/demand'
import { refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { listDesigns } from '#data/designs'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { countPitchEvents } from '#data/pitch-events'
import { findSeasonOn } from '#data/seasons'
import { cancelSession, changeSession, listSessions, recordSessions } from '#data/sessions'
import { listSquadCoaches } from '#data/squad-coaches'
import { lockSquad } from '#data/squad-lock'
import { action, goTo, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { newSessionOf, problemsOfChangedSession, problemsOfNewSession } from '#server/new-session'
import {
  changeSessionInput,
  goalsInput,
  matchInput,
  newSessionInput,
  practiceInput,
  sessionOfSquad,
} from '#server/session-input'
import { bringBookUpToDate, openForWriting } from '#server/session-writing'
import { whyNotWritable } from '#server/why-not-writable'
import { writeGoalsOf } from '#server/write-goals'
import { decideMatchWriting, saveMatchWriting } from '#server/write-match'
import { decideWriting, saveWriting } from '#server/write-practice'

/** A practice or match entered: held or still to come, nothing of it written yet. */
export const enterSession = action(newSessionInput, (viewer, input) =>
  inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'writeSession', { kind: 'squad', squadId: input.squadId })
    await lockSquad(tx, input.squadId)
    const season = await findSeasonOn(tx, input.day)
    const leaders = await listSquadCoaches(tx, input.squadId)
    const leaderIds = [viewer.personId, ...leaders.map(({ personId }) => personId)]
    const designIds = (await listDesigns(tx)).map(({ id }) => id)
    const days = { squadId: input.squadId, from: input.day, to: input.day }
    const ofDay = await listSessions(tx, { ...days, kind: input.kind, withCancelled: false })
    const problems = problemsOfNewSession(input, { season, leaderIds, designIds, ofDay })
    if (problems.length > 0) return refuse(...problems)
    const session = newSessionOf(input, { id: newId(), personId: viewer.personId })
    await recordSessions(tx, [session])
    const detail = { kind: session.kind, day: session.day }
    const by = { personId: viewer.personId, at: new Date() }
    await recordAudit(tx, { action: 'enterSession', objectKind: 'session', objectId: session.id, detail, by })
    const { today } = await loadClubDay(tx, by.at)
    const page = `/squads/${input.squadId}/sessions/${session.id}`
    return goTo(whyNotWritable(session, today) ? page : `${page}/write`)
  }),
)

/** Title, time and place of a session, and of one that nobody has written or tapped its day. */
export const changeWhenAndWhere = action(changeSessionInput, (viewer, input) =>
  inClub(viewer.clubId, async (tx) => {
    const session = await openForWriting(tx, viewer, input)
    const days = { squadId: input.squadId, from: input.day, to: input.day }
    const ofDay = await listSessions(tx, { ...days, kind: session.kind, withCancelled: false })
    const seasons = [await findSeasonOn(tx, session.day), await findSeasonOn(tx, input.day)]
    const problems = problemsOfChangedSession(input, {
      session,
      isInSeason: seasons[0]?.id === seasons[1]?.id,
      hasTaps: (await countPitchEvents(tx, [session.id])).has(session.id),
      others: ofDay.filter(({ id }) => id !== session.id),
    })
    if (problems.length > 0) return refuse(...problems)
    const { day, title, startsAt, place } = input
    await changeSession(tx, session.id, { day, title, startsAt, place })
    const by = { personId: viewer.personId, at: new Date() }
    const detail = { from: session.day, to: day }
    await recordAudit(tx, {
      action: 'changeSession',
      objectKind: 'session',
      objectId: session.id,
      detail,
      by,
    })
    return saved('Saved.')
  }),
)

/** A practice typed in, or corrected: register, turns and passes in one transaction. */
export const writePractice = action(practiceInput, (viewer, input) =>
  inClub(viewer.clubId, async (tx) => {
    const session = await openForWriting(tx, viewer, input)
    const now = new Date()
    const closed = whyNotWritable(session, (await loadClubDay(tx, now)).today)
    if (closed) return refuse({ path: '', message: closed })
    const decision = await decideWriting(tx, session, input)
    if (!decision.ok) return decision
    await saveWriting(tx, viewer, { session, input, now, decision: decision.value })
    await bringBookUpToDate(tx, session, now)
    return saved('Written. The season book has been brought up to date.')
  }),
)

/** A match typed in, or corrected: periods, register and spells in one transaction. */
export const writeMatch = action(matchInput, (viewer, input) =>
  inClub(viewer.clubId, async (tx) => {
    const session = await openForWriting(tx, viewer, input)
    const now = new Date()
    const closed = whyNotWritable(session, (await loadClubDay(tx, now)).today)
    if (closed) return refuse({ path: '', message: closed })
    const decision = await decideMatchWriting(tx, session, input)
    if (!decision.ok) return decision
    await saveMatchWriting(tx, viewer, { session, input, now, decision: decision.value })
    await bringBookUpToDate(tx, session, now)
    return saved('Written. The season book has been brought up to date.')
  }),
)

/** How a match ended, where the club counts goals. */
export const writeGoals = action(goalsInput, (viewer, input) => writeGoalsOf(viewer, input))

/** A session that was not held. What was written of it stays, and counts for nothing. */
export const cancelWritten = action(sessionOfSquad, (viewer, input) =>
  inClub(viewer.clubId, async (tx) => {
    const session = await openForWriting(tx, viewer, input)
    const by = { personId: viewer.personId, at: new Date() }
    await cancelSession(tx, { sessionId: session.id, by })
    await recordAudit(tx, { action: 'cancelSession', objectKind: 'session', objectId: session.id, by })
    await bringBookUpToDate(tx, session, by.at)
    return saved('Cancelled. It counts for nothing in the book.')
  }),
)
