import { type Changeover, changeover, type Placed, placedIn } from '#pitch/changeover'
import type { PlannedTurn, PracticePlan } from '#planning/practice-plan'
import type { DesignRound } from '#practice/design'
import type { SeatRole, Station } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** A turn that is to be played. */
export type UpcomingTurn = Changeover & {
  /** Place in the plan's list, from 0. */
  readonly index: number
  readonly turn: PlannedTurn
  /** Its places with only those in them who are there. */
  readonly stations: readonly Station[]
  /** Who has a place in it and is not there, out or not playing. */
  readonly missing: readonly Placed[]
}

/** A round that is to be played, or the rest of it. */
export type UpcomingRound = {
  readonly round: number
  /** Empty: the plan names no such round. */
  readonly title: string
  readonly design: DesignRound | null
  readonly turns: readonly [UpcomingTurn, ...UpcomingTurn[]]
  /** Who keeps goal in it, area by area, in the order they come; said when the round begins. */
  readonly keepers: readonly { readonly station: number; readonly playerIds: readonly PlayerId[] }[]
}

/** What is to be played from a place in the plan's list on, after turns with these places. */
export function upcomingTurns(
  turns: readonly PlannedTurn[],
  at: {
    readonly from: number
    readonly before: readonly Station[]
    readonly mayPlay: (playerId: PlayerId) => boolean
  },
): readonly UpcomingTurn[] {
  let before = at.before
  return turns.slice(at.from).map((turn, place) => {
    const stations = turn.stations.map((station) => only(station, at.mayPlay))
    const upcoming = {
      index: at.from + place,
      turn,
      stations,
      missing: placedIn(turn.stations).filter(({ playerId }) => !at.mayPlay(playerId)),
      ...changeover(before, stations),
    }
    before = stations
    return upcoming
  })
}

/** The round that comes first of some turns; null: there are none. */
export function upcomingRound(
  upcoming: readonly UpcomingTurn[],
  plan: PracticePlan | null,
): UpcomingRound | null {
  const [first] = upcoming
  if (!first) return null
  const { round } = first.turn
  const end = upcoming.findIndex(({ turn }) => turn.round !== round)
  const turns = end < 0 ? upcoming : upcoming.slice(0, end)
  const design = plan?.design.rounds[round] ?? null
  return {
    round,
    title: design?.title ?? '',
    design,
    turns: [first, ...turns.slice(1)],
    keepers: first.stations.map((_, station) => ({
      station,
      playerIds: [...new Set(turns.flatMap(({ stations }) => stations[station]?.keep ?? []))],
    })),
  }
}

function only(station: Station, mayPlay: (playerId: PlayerId) => boolean): Station {
  const there = (role: SeatRole) => station[role].filter(mayPlay)
  return { attack: there('attack'), defend: there('defend'), keep: there('keep') }
}
