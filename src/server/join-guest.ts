import 'server-only'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import type { Author } from '#data/author'
import { listClubPlayers } from '#data/club-players'
import { joinGuest, listGuests } from '#data/guests'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { recordSpells, voidSpells } from '#data/match-spells'
import { listPitchGuestIds } from '#data/pitch-events'
import { listSessionIdsWith, recordRegister } from '#data/register-lines'
import { getSession, lockSessions, type Session } from '#data/sessions'
import { recordEvents } from '#data/turn-events'
import { loadWritten, type WrittenMatch, type WrittenPractice } from '#data/written-sessions'
import type { PracticeEvent } from '#practice/event'
import { eventsThatStand } from '#practice/replay'
import { type Station, seatRoles } from '#practice/turn'
import { type Done, saved } from '#server/action'
import { loadTappedMatch } from '#server/match-book'
import { isTappedTwice, loadTapped } from '#server/pitch-book'
import { bringBookUpToDate, openForWriting } from '#server/session-writing'
import { joinGuestDeed } from '#server/tapped-writings'
import type { JoinGuestInput } from '#server/whistle-input'
import { checkLineOverlap } from '#squad/checks/line-overlap'
import type { PlayerId } from '#squad/player'

type Joining = { readonly guestId: PlayerId; readonly playerId: PlayerId }

/**
 * Says whom of the club a guest turned out to be: wherever the guest was written down the player is written instead,
 * by voiding and writing anew, and the book is brought up to date.
 * @throws AppError `notAllowed` or `notFound`.
 */
export async function joinGuestOf(
  viewer: Viewer,
  input: JoinGuestInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  return inClub(viewer.clubId, async (tx) => {
    const session = await openForWriting(tx, viewer, input)
    const [guest] = await listGuests(tx, [input.guestId])
    const sessionIds = await listSessionIdsWith(tx, input.guestId)
    const isHere =
      sessionIds.includes(session.id) || (await listPitchGuestIds(tx, session.id)).has(input.guestId)
    if (!guest || !isHere || guest.joinedToId !== null)
      return refuse({ path: 'guestId', message: 'is no guest of this session any more; reload the page' })
    const player = (await listJoinable(tx, viewer)).find(({ id }) => id === input.playerId)
    if (!player) return refuse({ path: 'playerId', message: 'is no player you can choose; choose again' })
    await lockSessions(tx, sessionIds)
    const sessions = await Promise.all(sessionIds.map((id) => getSession(tx, id)))
    if (sessions.some(({ squadId }) => !may(viewer, 'writeSession', { kind: 'squad', squadId })))
      return refuse({
        path: '',
        message: 'This guest was at a session of another squad too: ask the head coach to join the two.',
      })
    const written = await loadWritten(tx, sessions)
    const joining = { guestId: guest.id, playerId: player.id }
    const meet =
      written.find(({ register }) => isThereTwice(register, joining))?.session ??
      (await findTappedTwice(tx, { sessions: [session, ...sessions], joining }))
    if (meet) {
      const message = `${player.name} was at the session of ${meet.day} at the same time as this guest: they cannot be one player.`
      return refuse({ path: 'playerId', message })
    }
    const by = { personId: viewer.personId, at: now }
    for (const one of written) await rewrite(tx, { written: one, joining, by })
    if (!(await joinGuest(tx, joining)))
      throw new AppError('conflict', `guest ${guest.id} was joined meanwhile`)
    const detail = { playerId: player.id, sessions: written.length }
    await recordAudit(tx, { action: 'joinGuest', objectKind: 'player', objectId: guest.id, detail, by })
    for (const one of written) await bringBookUpToDate(tx, one.session, now)
    return saved(`Joined: what was written of the guest is ${player.name}’s now.`)
  })
}

/** Players a guest may turn out to be: of the squads that the viewer may see. */
export async function listJoinable(tx: ClubTx, viewer: Viewer) {
  return (await listClubPlayers(tx)).filter(
    ({ id: playerId, squadIds }) =>
      squadIds.length > 0 && may(viewer, 'seePlayer', { kind: 'player', playerId, squadIds }),
  )
}

function isThereTwice(register: WrittenPractice['register'], joining: Joining): boolean {
  const { guestId, playerId } = joining
  const lines = register.filter((line) => line.playerId === guestId || line.playerId === playerId)
  return checkLineOverlap(lines.map((line) => ({ ...line, playerId }))).length > 0
}

/** The first session in which both were tapped as there at once: it may not be in the book yet. */
async function findTappedTwice(
  tx: ClubTx,
  { sessions, joining }: { readonly sessions: readonly Session[]; readonly joining: Joining },
): Promise<Session | null> {
  for (const session of new Map(sessions.map((one) => [one.id, one])).values()) {
    const isTwice =
      session.kind === 'match'
        ? isThereTwice((await loadTappedMatch(tx, session)).book.register, joining)
        : isTappedTwice(await loadTapped(tx, session), joining)
    if (isTwice) return session
  }
  return null
}

type Rewriting<Written> = { readonly written: Written; readonly joining: Joining; readonly by: Author }

async function rewrite(
  tx: ClubTx,
  { written, joining, by }: Rewriting<WrittenPractice | WrittenMatch>,
): Promise<void> {
  const { guestId, playerId } = joining
  const sessionId = written.session.id
  const lines = written.register
    .filter((line) => line.playerId === guestId || line.playerId === playerId)
    .map((line) => ({ ...line, playerId }))
  await recordRegister(tx, { sessionId, lines, alsoClear: [guestId], by })
  if (written.kind === 'practice') await rewriteTurns(tx, { written, joining, by })
  else await rewriteSpells(tx, { written, joining, by })
  const detail = { guestId, playerId }
  await recordAudit(tx, { action: joinGuestDeed, objectKind: 'session', objectId: sessionId, detail, by })
}

async function rewriteTurns(tx: ClubTx, { written, joining, by }: Rewriting<WrittenPractice>): Promise<void> {
  const { guestId } = joining
  const own = eventsThatStand(written.events).filter((event) =>
    event.kind === 'turn'
      ? event.turn.stations.some((station) => seatRoles.some((role) => station[role].includes(guestId)))
      : event.playerId === guestId,
  )
  const events: readonly PracticeEvent[] = [
    ...own.map(({ id }) => ({ kind: 'void' as const, id: newId(), voids: id })),
    ...own.map((event) => underPlayer(event, joining)),
  ]
  await recordEvents(tx, { practices: [{ sessionId: written.session.id, events }], by })
}

function underPlayer(
  event: Exclude<PracticeEvent, { kind: 'void' }>,
  { guestId, playerId }: Joining,
): PracticeEvent {
  if (event.kind === 'passed') return { ...event, id: newId(), playerId }
  const idOf = (id: PlayerId) => (id === guestId ? playerId : id)
  const stations = event.turn.stations.map(
    ({ attack, defend, keep }): Station => ({
      attack: attack.map(idOf),
      defend: defend.map(idOf),
      keep: keep.map(idOf),
    }),
  )
  return { ...event, id: newId(), turn: { ...event.turn, stations } }
}

async function rewriteSpells(tx: ClubTx, { written, joining, by }: Rewriting<WrittenMatch>): Promise<void> {
  const { guestId, playerId } = joining
  const sessionId = written.session.id
  const spells = written.match.spells.filter((spell) => spell.playerId === guestId)
  if (spells.length === 0) return
  await voidSpells(tx, { sessionId, playerIds: [guestId], by })
  const matches = [{ sessionId, spells: spells.map((spell) => ({ ...spell, playerId })) }]
  await recordSpells(tx, { matches, by })
}
