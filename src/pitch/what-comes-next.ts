import type { Seconds } from '#common/time'
import type { LiveTurn } from '#pitch/live-turn'
import type { PitchRegister } from '#pitch/pitch-register'
import type { PitchTimes } from '#pitch/pitch-times'
import { firstOfRound } from '#pitch/plan-as-it-stands'
import type { DecidedTaps } from '#pitch/play-taps'
import { type PlayedTurn, seatedIn } from '#pitch/played-turns'
import { type UpcomingTurn, upcomingTurns } from '#pitch/upcoming'
import type { PlannedTurn } from '#planning/practice-plan'
import type { PlayerId } from '#squad/player'

export type WaitingPlayer = { readonly playerId: PlayerId; readonly since: Seconds }

/** How far a practice has got. */
export type Situation = {
  readonly taps: DecidedTaps
  readonly times: PitchTimes
  readonly register: PitchRegister
  readonly turns: readonly PlannedTurn[]
  readonly played: readonly PlayedTurn[]
  readonly live: LiveTurn | null
}

/** What is to be played, from the turn after what was played last on. */
export function upcomingOf(at: Situation): readonly UpcomingTurn[] {
  if (at.times.endedAt !== null) return []
  const ends = at.taps.roundsDone.map(({ deed }) => {
    const first = firstOfRound(at.turns, deed.round)
    const after =
      first === null ? -1 : at.turns.findIndex(({ round }, index) => index > first && round !== deed.round)
    return first === null ? 0 : after < 0 ? at.turns.length : after
  })
  const playedUpTo = [...at.played, ...(at.live ? [at.live] : [])].map(({ index }) => index + 1)
  const asPlanned = at.taps.asPlanned?.deed.turns.length ?? 0
  const last = at.live?.stations ?? at.played.at(-1)?.parts.at(-1)?.stations ?? []
  return upcomingTurns(at.turns, {
    from: Math.floor(
      Math.max(0, asPlanned, ...ends, ...playedUpTo.filter((index) => index <= at.turns.length)),
    ),
    before: last,
    mayPlay: mayPlay(at.register),
  })
}

/** Who may be given a place now. Before anyone is tapped as here, whoever was not tapped otherwise. */
function mayPlay(register: PitchRegister): (playerId: PlayerId) => boolean {
  const here = register.players.filter(
    ({ state }) => state === 'here' || (state === 'missing' && !register.isTaken),
  )
  const ids = new Set(here.map(({ playerId }) => playerId))
  return (playerId) => ids.has(playerId)
}

/** Who is there without a place in the live turn, or in the next; whoever waits longest first. */
export function waitingOf(at: Situation, next: UpcomingTurn | undefined): readonly WaitingPlayer[] {
  const placed = new Set(seatedIn(at.live?.stations ?? next?.stations ?? []))
  const may = mayPlay(at.register)
  const lastPlace = new Map<PlayerId, Seconds>()
  for (const part of at.played.flatMap((turn) => turn.parts)) {
    for (const playerId of seatedIn(part.stations)) lastPlace.set(playerId, part.end)
  }
  return at.register.players
    .filter(({ playerId }) => may(playerId) && !placed.has(playerId))
    .map(({ playerId, segments }) => ({
      playerId,
      since: Math.max(lastPlace.get(playerId) ?? 0, segments.at(-1)?.from ?? 0),
    }))
    .sort((a, b) => a.since - b.since)
}
