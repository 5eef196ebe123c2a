import 'server-only'
import { InvariantError } from '#common/result'
import { type SeatRole, type Station, seatRoles, type Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** Who sits where in a turn: [player, station, role, place], both numbers from 1. */
export type Seat = readonly [PlayerId, number, SeatRole, number]

export type SeatRow = {
  readonly turnEventId: string
  readonly playerId: PlayerId
  readonly station: number
  readonly role: SeatRole
  readonly place: number
}

/** A turn's row with its seats, in order of their places, as the turn that was written. */
export function turnOfRow(row: {
  readonly id: string
  readonly startSecond: number | null
  readonly endSecond: number | null
  readonly themeId: string | null
  readonly stationCount: number | null
  readonly round: string | null
  readonly continuesWait: boolean
  readonly continuesTurn: boolean
  readonly chosenBy: 'attack' | 'defend' | null
  readonly seats: readonly Seat[] | null
}): Turn {
  const {
    id,
    startSecond: start,
    endSecond: end,
    stationCount,
    themeId,
    round,
    continuesWait,
    continuesTurn,
    chosenBy,
  } = row
  if (start === null || end === null || stationCount === null)
    throw new InvariantError('A turn has a time.', { id })
  const stations: Record<SeatRole, PlayerId[]>[] = Array.from({ length: stationCount }, () => ({
    attack: [],
    defend: [],
    keep: [],
  }))
  for (const [playerId, station, role] of row.seats ?? []) {
    const at = stations[station - 1]
    if (!at) throw new InvariantError('A seat is at a station of its turn.', { id, station, stationCount })
    at[role].push(playerId)
  }
  return { start, end, themeId, stations, round, continuesWait, continuesTurn, chosenBy }
}

/** The seats of a turn as rows. */
export function placesOfTurn(turnEventId: string, turn: Turn): readonly SeatRow[] {
  return turn.stations.flatMap((station: Station, index) =>
    seatRoles.flatMap((role) =>
      station[role].map((playerId, place) => ({
        turnEventId,
        playerId,
        station: index + 1,
        role,
        place: place + 1,
      })),
    ),
  )
}
