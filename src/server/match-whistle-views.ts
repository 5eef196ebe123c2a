import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { inClub } from '#data/in-club'
import { listPlayers } from '#data/players'
import { getVersion } from '#data/written-history'
import type { WrittenMatch } from '#data/written-sessions'
import { namesApart } from '#fairness/book/names-apart'
import { forgetGuestsWhenDue } from '#server/forget-guests'
import { forgetTodayWhenDue } from '#server/forget-today'
import { loadGuestsOf } from '#server/guests-of-session'
import { loadTappedMatch, registerOfMatch } from '#server/match-book'
import { loadMatchFrame } from '#server/match-frame'
import { loadFrame } from '#server/page-frame'
import { accountOf, loadSquadRules } from '#server/rebuild'
import { playersWithOtherSpells } from '#server/record-match'
import { getSessionOfSquad } from '#server/session-of-squad'
import { playersWithOtherLines } from '#server/session-register'
import { loadSquadSeason } from '#server/squad-season'
import { whyNotWritable } from '#server/why-not-writable'
import { takenBackFromOut } from '#squad/out-for-today'
import type { SquadId } from '#squad/squad'

/** A match after the whistle: what was tapped and what it comes to. @throws AppError `notAllowed` or `notFound`. */
export async function loadMatchWhistle(
  viewer: Viewer,
  {
    squadId,
    sessionId,
    now = new Date(),
  }: { readonly squadId: SquadId; readonly sessionId: string; readonly now?: Date },
) {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'writeSession', { kind: 'squad', squadId })
    const of = await loadSquadSeason(tx, viewer, { squadId, now })
    await forgetGuestsWhenDue(tx, of)
    await forgetTodayWhenDue(tx, of)
    const session = await getSessionOfSquad(tx, { squadId, sessionId })
    const tapped = await loadTappedMatch(tx, session)
    const { book, state, before, lastWrite, cursor } = tapped
    const register = registerOfMatch(tapped)
    const presence = register.filter(({ state: how }) => how === 'here')
    const match = { id: session.id, day: session.day, ...book, register: presence }
    const asTapped = { ...session, written: book.written, periods: book.periods }
    const written: WrittenMatch = { ...before, session: asTapped, register, match }
    const ids = [
      ...state.players.map(({ id }) => id),
      ...[...before.register, ...register].map(({ playerId }) => playerId),
    ]
    const people = namesApart(await listPlayers(tx, [...new Set(ids)]))
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad: of.squad,
      session,
      timeZone: of.club.timeZone,
      countsGoals: of.club.countsGoals,
      closed: whyNotWritable(session, of.today),
      version: await getVersion(tx, sessionId),
      cursor,
      tapCount: tapped.events.length,
      lastWrite,
      tapsSince: lastWrite ? cursor - lastWrite.upTo : 0,
      /** The book says what was tapped. */
      isWritten:
        playersWithOtherSpells(before.match.spells, book.spells).length === 0 &&
        JSON.stringify(session.periods) === JSON.stringify(book.periods) &&
        playersWithOtherLines(before.register, register).length === 0 &&
        session.written === book.written,
      typed: tapped.typed,
      takenBack: takenBackFromOut(before.register, register),
      format: (await loadMatchFrame(tx, session)).format,
      plan: tapped.toFold.plan,
      book: { ...book, register },
      setAside: state.setAside,
      account: accountOf(written, await loadSquadRules(tx, session.squadId, [written])),
      players: people.map(({ id, name }) => ({ id, name })),
      ...(await loadGuestsOf(tx, viewer, { ids, people })),
    }
  })
}
