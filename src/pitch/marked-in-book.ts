import type { Seconds } from '#common/time'
import type { PitchEvent } from '#pitch/pitch-event'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

/** How the book had a player before anything was tapped of it, and from which second on. */
export type BookMark = { readonly from: Seconds; readonly state: 'out' | 'notPlaying' }

export type BookMarks = ReadonlyMap<PlayerId, BookMark>

export const noMarks: BookMarks = new Map()

/**
 * Who is out for today, or here without playing, by what was typed into the book's register. Out comes before all else.
 * `except`: players whose lines came from a new face that was joined to them.
 */
export function marksInBook(
  register: readonly RegisterLine[],
  except: ReadonlySet<PlayerId> = new Set(),
): BookMarks {
  const marks = new Map<PlayerId, BookMark>()
  for (const { playerId, from, state } of register) {
    if (state === 'here' || except.has(playerId)) continue
    const known = marks.get(playerId)
    if (!known || (state === 'out' && known.state !== 'out') || (state === known.state && from < known.from))
      marks.set(playerId, { from, state })
  }
  return marks
}

/**
 * The marks that the pitch itself says nothing of. A practice that was written into the book from what was tapped has its
 * own marks there; where such a tap was taken back since, the book must not bring it in again. And who left after some
 * round, as a coach answered afterwards, had played until then.
 */
export function marksOfOthers(marks: BookMarks, events: readonly PitchEvent[]): BookMarks {
  if (marks.size === 0) return marks
  const saidOut = new Set<PlayerId>()
  const saidOtherwise = new Set<PlayerId>()
  for (const { deed } of events) {
    if (deed.kind === 'register') saidOtherwise.add(deed.playerId)
    if (deed.kind === 'register' && deed.state === 'out') saidOut.add(deed.playerId)
    if (deed.kind === 'asPlanned') for (const { playerId } of deed.left ?? []) saidOtherwise.add(playerId)
  }
  return new Map([...marks].filter(([id, { state }]) => !(state === 'out' ? saidOut : saidOtherwise).has(id)))
}
