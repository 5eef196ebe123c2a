import { fairKeepShare, fairSeatShare } from '#fairness/fair-share'
import { resting, roleOf, seatPlace, situationOf } from '#rotation/place'
import {
  allSeatsOfTurn,
  type ColumnSeconds,
  presentAt,
  type RotationColumn,
  type RotationProblem,
  type RotationTurn,
  rotationColumns,
  seatRoles,
  seatsOfTurn,
} from '#rotation/problem'

export const noSeconds: ColumnSeconds = {
  attack: 0,
  defend: 0,
  keep: 0,
  rest: 0,
  outnumbering: 0,
  level: 0,
  outnumbered: 0,
}

/**
 * What each player is due in this practice, whoever then gets which seat: fair shares do not depend on the plan. Who
 * agreed to fewer turns is due that part of its playing, and waits for the rest; nobody else is due more for it, as in
 * the book.
 */
export function fairSeconds(problem: RotationProblem): readonly ColumnSeconds[] {
  const due = problem.players.map(() => ({ ...noSeconds }))
  problem.turns.forEach((turn, index) => {
    const present = presentAt(problem, index)
    const able = present.filter((player) => problem.players[player]?.keeps).length
    const places = { present: present.length, keeperSeats: seatsOfTurn(turn, 'keep'), able }
    const seats = seatsByColumn(turn, present.length)
    for (const player of present) {
      const isAble = problem.players[player]?.keeps ?? false
      const own = due[player] as Record<RotationColumn, number>
      own.keep += turn.seconds * fairKeepShare(places, isAble)
      for (const column of rotationColumns)
        if (column !== 'keep')
          own[column] += turn.seconds * fairSeatShare(places, { seats: seats[column], isAble })
    }
  })
  return due.map((own, player) => withAgreedShare(own, problem.players[player]?.dueShare ?? 1))
}

function withAgreedShare(due: ColumnSeconds, share: number): ColumnSeconds {
  if (share === 1) return due
  const own: Record<RotationColumn, number> = { ...due }
  for (const column of rotationColumns) if (column !== 'rest') own[column] = due[column] * share
  for (const role of seatRoles) own.rest += due[role] - own[role]
  return own
}

function seatsByColumn(turn: RotationTurn, present: number): ColumnSeconds {
  const seats: Record<RotationColumn, number> = { ...noSeconds }
  turn.stations.forEach((station, index) => {
    for (const role of seatRoles) {
      seats[role] += station[role]
      const situation = situationOf(turn.stations, seatPlace(index, role))
      if (situation) seats[situation] += station[role]
    }
  })
  seats.rest = present - allSeatsOfTurn(turn)
  return seats
}

/** Seconds that a place for the whole of a turn brings in each column. */
export function addPlaceSeconds(
  own: Record<RotationColumn, number>,
  turn: RotationTurn,
  place: number,
): void {
  if (place < resting) return
  own[roleOf(place)] += turn.seconds
  const situation = situationOf(turn.stations, place)
  if (situation) own[situation] += turn.seconds
}
