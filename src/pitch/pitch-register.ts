import type { Seconds } from '#common/time'
import type { BookMarks } from '#pitch/marked-in-book'
import type { EpochMs } from '#pitch/pitch-event'
import { type PitchTimes, secondAt } from '#pitch/pitch-times'
import type { SetAside } from '#pitch/set-aside'
import { type DoneEvent, type EventOf, eventsOf } from '#pitch/standing-events'
import type { PlayerId } from '#squad/player'
import type { RegisterState } from '#squad/register'
import { type RegisterSegment, setFrom } from '#squad/register-segments'

/** Of the squad, as the phone knows them. */
export type RosterPlayer = { readonly id: PlayerId; readonly name: string }

export type RegisteredPlayer = {
  readonly playerId: PlayerId
  readonly name: string
  readonly isGuest: boolean
  /** From when to when it was how there; empty: not seen. */
  readonly segments: readonly RegisterSegment[]
  /** As last tapped; `missing`: not tapped at all. */
  readonly state: RegisterState | 'gone' | 'missing'
  /** Out for today; only a second answer takes it back. */
  readonly isOut: boolean
  /** It had a place in what was played before anybody was tapped as here: taken to be there from the start. */
  readonly isAssumed: boolean
}

export type PitchRegister = {
  /** The squad in its order, then guests in the order they came. */
  readonly players: readonly RegisteredPlayer[]
  /** Somebody was tapped as here: whoever was not is missing. */
  readonly isTaken: boolean
  readonly setAside: readonly SetAside[]
}

/**
 * Who was there, from when to when, in seconds of the practice. Of taps that contradict each other the later holds, but
 * that nothing follows on being out for today except going home. Whoever had a place in what was played before anybody
 * was tapped as here was there from the start up to that tap: a coach who says that a round was played has said who was
 * there, and what is tapped of one child later takes nothing from the others. Whom the book has out for today is out
 * whatever is tapped, but for a tap with a second answer; whom it has not playing is so until tapped.
 */
export function pitchRegister(
  standing: readonly DoneEvent[],
  at: {
    readonly roster: readonly RosterPlayer[]
    readonly times: Pick<PitchTimes, 'beganAt' | 'heldUntil'>
    /** Who had a place in what was played, and from which second on at first. */
    readonly placed: ReadonlyMap<PlayerId, Seconds>
    /** Who left, as the answer to one question after the practice says. */
    readonly left: ReadonlyMap<PlayerId, Seconds>
    /** How the book has players of whom the pitch says nothing else. */
    readonly marks: BookMarks
  },
): PitchRegister {
  const setAside: SetAside[] = []
  const guests = guestsOf(standing, at.roster, setAside)
  const people = [
    ...at.roster.map((player) => ({ ...player, came: null })),
    ...guests.map(({ deed, at: came }) => ({ id: deed.playerId, name: deed.name, came })),
  ]
  const known = new Set(people.map(({ id }) => id))
  const taps = eventsOf(standing, 'register').filter(({ id, deed }) => {
    if (known.has(deed.playerId)) return true
    setAside.push({ id, why: 'unknownPlayer' })
    return false
  })
  const firstHere = taps.find(({ deed }) => deed.state === 'here') ?? null
  const isTaken = firstHere !== null
  const { beganAt, heldUntil } = at.times
  const second = (tapped: EpochMs) =>
    beganAt === null || heldUntil === null || tapped <= heldUntil ? 0 : secondAt(beganAt, tapped)
  const takenFrom = firstHere && second(firstHere.at)
  const players = people.map(({ id: playerId, name, came }): RegisteredPlayer => {
    const placedFrom = came === null ? at.placed.get(playerId) : undefined
    // The one tapped as here when nobody had been came just then.
    const cameFirst = firstHere?.deed.playerId === playerId
    const isAssumed = placedFrom !== undefined && !cameFirst && (takenFrom === null || placedFrom < takenFrom)
    let segments: readonly RegisterSegment[] = isAssumed ? [{ from: 0, to: takenFrom, state: 'here' }] : []
    if (came !== null) segments = [{ from: second(came), to: null, state: 'here' }]
    let isOut = false
    let now: RegisteredPlayer['state'] = came === null ? 'missing' : 'here'
    let mark = at.marks.get(playerId) ?? null
    const markUntil = (until: Seconds) => {
      if (!mark || until < mark.from) return
      isOut ||= mark.state === 'out'
      now = mark.state
      segments = setFrom(segments, mark.from, mark.state)
      mark = null
    }
    for (const tap of taps.filter(({ deed }) => deed.playerId === playerId)) {
      const { state, secondAnswer = false } = tap.deed
      markUntil(second(tap.at))
      if (state === 'here' && secondAnswer && at.marks.has(playerId)) {
        isOut = false
        mark = null
      }
      if (isOut && state !== 'gone' && state !== 'out') {
        setAside.push({ id: tap.id, why: 'isOut' })
      } else {
        isOut ||= state === 'out'
        now = state
        segments = setFrom(segments, second(tap.at), state === 'gone' ? 'away' : state)
      }
    }
    markUntil(Number.POSITIVE_INFINITY)
    const left = at.left.get(playerId)
    if (left !== undefined) {
      segments = setFrom(segments, left, 'away')
      now = 'gone'
    }
    return {
      playerId,
      name,
      isGuest: came !== null,
      segments,
      state: now,
      isOut,
      isAssumed,
    }
  })
  return { players, isTaken, setAside }
}

function guestsOf(
  standing: readonly DoneEvent[],
  roster: readonly RosterPlayer[],
  setAside: SetAside[],
): readonly EventOf<'guest'>[] {
  const known = new Set(roster.map(({ id }) => id))
  return eventsOf(standing, 'guest').filter(({ id, deed }) => {
    if (!known.has(deed.playerId)) {
      known.add(deed.playerId)
      return true
    }
    setAside.push({ id, why: 'knownPlayer' })
    return false
  })
}

/** How a player stands at a second; null: not there, or gone. */
export function stateAt(segments: readonly RegisterSegment[], second: Seconds): RegisterSegment | null {
  return segments.find(({ from, to }) => from <= second && (to === null || second < to)) ?? null
}
