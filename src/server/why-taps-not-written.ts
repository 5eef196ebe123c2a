import 'server-only'
import type { Problem } from '#common/problem'
import type { ClubTx } from '#data/in-club'
import { listPlayers } from '#data/players'
import type { Session } from '#data/sessions'
import { whyTooLong } from '#pitch/too-long'
import type { TappedMatch } from '#server/match-book'
import type { TappedPractice } from '#server/pitch-book'
import { problemsOfRegister } from '#server/session-register'
import type { ConfirmInput } from '#server/whistle-input'
import { checkLineOverlap } from '#squad/checks/line-overlap'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

type Deciding = {
  readonly kind: Session['kind']
  readonly tapped: TappedPractice | TappedMatch
  readonly register: readonly RegisterLine[]
  readonly input: Pick<ConfirmInput, 'cursor' | 'overTyped' | 'takenBack'>
  /** What only a practice, or only a match, has to say. */
  readonly own: readonly Problem[]
}

/** Every reason why what was tapped of a session cannot be written now. */
export async function whyTapsNotWritten(
  tx: ClubTx,
  { kind, tapped, register, input, own }: Deciding,
): Promise<readonly Problem[]> {
  const { book, before, typed, cursor } = tapped
  const say = (message: string): readonly Problem[] => [{ path: '', message }]
  if (input.cursor !== null && input.cursor !== cursor)
    return say('More was tapped since this page was opened. It stands below now: look at it, then write.')
  if (own.length > 0) return own
  const tooLong = whyTooLong(book, kind)
  if (tooLong) return say(tooLong)
  if (typed && !input.overTyped) {
    const message = `Somebody typed this ${kind} in, or corrected it, by hand. Say below whether what was tapped is to stand in its place.`
    return [{ path: 'overTyped', message }]
  }
  const ids = new Set([...before.register, ...register].map(({ playerId }) => playerId))
  const names = new Map((await listPlayers(tx, [...ids])).map(({ id, name }) => [id, name]))
  const nameOf = (playerId: PlayerId) => names.get(playerId) ?? 'Somebody'
  // What was tapped always comes to a session that can be; only a guest joined to somebody who was there too cannot.
  const twice = new Set(
    checkLineOverlap(register).flatMap((fault) =>
      fault.rule === 'linesOverlap' ? [register[fault.line]?.playerId ?? ''] : [],
    ),
  )
  if (twice.size > 0) return [...twice].flatMap((playerId) => say(thereTwice(nameOf(playerId), kind)))
  const ofRegister = problemsOfRegister(
    { before: before.register, after: register },
    { takenBack: input.takenBack, nameOf },
  )
  return ofRegister.map(({ message }) => ({ path: 'takenBack', message }))
}

function thereTwice(name: string, kind: Session['kind']): string {
  return `${name} was tapped as here at the same time as the guest who was joined to ${name}. Take one of the two back at the pitch page, or type the ${kind} in by hand.`
}
