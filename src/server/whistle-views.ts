import 'server-only'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { type ClubTx, inClub } from '#data/in-club'
import { listPlayers } from '#data/players'
import { namesApart } from '#fairness/book/names-apart'
import { afterTheWhistle } from '#pitch/after-the-whistle'
import { bookChanges } from '#pitch/book-changes'
import { joinedDifferences } from '#pitch/joined-differences'
import { eventsThatStand } from '#practice/replay'
import { loadGuestsOf } from '#server/guests-of-session'
import { loadTapped, registerToWrite, type TappedPractice } from '#server/pitch-book'
import { playersWithOtherLines } from '#server/session-register'
import { type AtWhistle, loadWhistleFrame, openWhistle } from '#server/whistle-frame'
import { accountOfTapped, loadMoved } from '#server/whistle-moved'
import type { Player, PlayerId } from '#squad/player'

/**
 * A practice after the whistle: what was tapped, what it comes to, and what it does, or did, to the season.
 * @throws AppError `notAllowed` or `notFound`.
 */
export async function loadWhistle(viewer: Viewer, at: AtWhistle) {
  return inClub(viewer.clubId, async (tx) => {
    const { of, session } = await openWhistle(tx, viewer, at)
    if (session.kind !== 'practice') throw new AppError('notFound', `session ${session.id} is no practice`)
    const tapped = await loadTapped(tx, session)
    const { book, state, before, lastWrite } = tapped
    const register = registerToWrite(tapped)
    const account = await accountOfTapped(tx, session, { tapped, register })
    const people = await loadPeople(tx, tapped)
    const after = afterTheWhistle(state, { lengthSeconds: session.lengthSeconds })
    return {
      ...(await loadWhistleFrame(tx, viewer, { of, session, tapped, register })),
      /** The book says what was tapped. */
      isWritten: isSame(tapped) && playersWithOtherLines(before.register, register).length === 0,
      plan: tapped.plan,
      absent: absentBefore(tapped),
      length: book.lengthAsked,
      book: { ...book, register },
      after: { ...after, differences: joinedDifferences(after.differences, tapped.joined) },
      setAside: state.setAside,
      turnsNow: state.turns,
      account,
      moved: await loadMoved(tx, of, { session, account, players: people, lastWrite }),
      players: people.map(({ id, name }) => ({ id, name })),
      ...(await loadGuestsOf(tx, viewer, { ids: guestIdsOf(tapped), people })),
    }
  })
}

/** Of those planned for, whom a register has not that was taken before the practice, and not at the pitch. */
function absentBefore({ plan, state, before }: TappedPractice): readonly PlayerId[] {
  if (state.isRegisterTaken || before.register.length === 0) return []
  const there = new Set(before.register.map(({ playerId }) => playerId))
  return (plan?.players ?? []).map(({ playerId }) => playerId).filter((playerId) => !there.has(playerId))
}

function isSame({ book, before }: TappedPractice): boolean {
  const { voids, turns, passes } = bookChanges(eventsThatStand(before.events), book)
  const { written, lengthSeconds } = before.session
  return (
    voids.length + turns.length + passes.length === 0 &&
    written === book.written &&
    (book.lengthSeconds === null || book.lengthSeconds === lengthSeconds)
  )
}

/** Everyone who was tapped or is written down, by name, two of one name told apart. */
async function loadPeople(tx: ClubTx, { state, before, book }: TappedPractice): Promise<readonly Player[]> {
  const ids = new Set([
    ...state.players.map(({ playerId }) => playerId),
    ...before.register.map(({ playerId }) => playerId),
    ...book.register.map(({ playerId }) => playerId),
  ])
  return namesApart(await listPlayers(tx, [...ids]))
}

/** Whoever may be a guest: tapped as one, or written down. */
function guestIdsOf({ state, before }: TappedPractice): readonly PlayerId[] {
  return [
    ...state.players.flatMap(({ isGuest, playerId }) => (isGuest ? [playerId] : [])),
    ...before.register.map(({ playerId }) => playerId),
  ]
}
