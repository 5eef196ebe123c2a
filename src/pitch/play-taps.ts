import type { PlayTaps } from '#pitch/pitch-times'
import type { SetAside } from '#pitch/set-aside'
import { type DoneEvent, eventsOf } from '#pitch/standing-events'

export type DecidedTaps = PlayTaps & {
  /** The start that stands, for every start of the same turn. */
  readonly startOf: ReadonlyMap<string, string>
  readonly setAside: readonly SetAside[]
}

/** Which of the taps that say what was played stand: two phones may have tapped the same, and then the first does. */
export function playTaps(standing: readonly DoneEvent[]): DecidedTaps {
  const setAside: SetAside[] = []
  const startOfTurn = new Map<number, string>()
  const startOf = new Map<string, string>()
  const ends = eventsOf(standing, 'turnEnd')
  const starts = eventsOf(standing, 'turnStart').filter(({ id, at, deed }) => {
    // Started and over in one breath: a slip of the finger, which must not stand in the way of the turn itself.
    if (ends.some((end) => end.deed.start === id && end.at >= at && end.at - at < 1000)) {
      setAside.push({ id, why: 'noTime' })
      return false
    }
    const first = startOfTurn.get(deed.turn)
    startOf.set(id, first ?? id)
    if (first === undefined) startOfTurn.set(deed.turn, id)
    else setAside.push({ id, why: 'sameTurn' })
    return first === undefined
  })
  const doneRounds = new Set<number>()
  const roundsDone = eventsOf(standing, 'roundDone').filter(({ id, deed }) => {
    if (!doneRounds.has(deed.round)) {
      doneRounds.add(deed.round)
      return true
    }
    setAside.push({ id, why: 'sameRound' })
    return false
  })
  const [asPlanned, ...more] = eventsOf(standing, 'asPlanned')
  for (const { id } of more) setAside.push({ id, why: 'alreadySaid' })
  return { starts, roundsDone, asPlanned: asPlanned ?? null, startOf, setAside }
}
