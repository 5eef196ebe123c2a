import 'server-only'
import type { Viewer } from '#access/viewer'
import { inClub } from '#data/in-club'
import { listPlayers } from '#data/players'
import type { WrittenMatch } from '#data/written-sessions'
import { namesApart } from '#fairness/book/names-apart'
import { loadGuestsOf } from '#server/guests-of-session'
import { loadTappedMatch, registerOfMatch } from '#server/match-book'
import { loadMatchFrame } from '#server/match-frame'
import { accountOf, loadSquadRules } from '#server/rebuild'
import { playersWithOtherSpells } from '#server/record-match'
import { playersWithOtherLines } from '#server/session-register'
import { type AtWhistle, loadWhistleFrame, openWhistle } from '#server/whistle-frame'

/** A match after the whistle: what was tapped and what it comes to. @throws AppError `notAllowed` or `notFound`. */
export async function loadMatchWhistle(viewer: Viewer, at: AtWhistle) {
  return inClub(viewer.clubId, async (tx) => {
    const { of, session } = await openWhistle(tx, viewer, at)
    const tapped = await loadTappedMatch(tx, session)
    const { book, state, before } = tapped
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
      ...(await loadWhistleFrame(tx, viewer, { of, session, tapped, register })),
      countsGoals: of.club.countsGoals,
      /** The book says what was tapped. */
      isWritten:
        playersWithOtherSpells(before.match.spells, book.spells).length === 0 &&
        JSON.stringify(session.periods) === JSON.stringify(book.periods) &&
        playersWithOtherLines(before.register, register).length === 0 &&
        session.written === book.written,
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
