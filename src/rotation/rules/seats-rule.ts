import { resting, seatPlace } from '#rotation/place'
import { seatRoles } from '#rotation/problem'
import type { Rule } from '#rotation/rule'

/** Every seat is taken, none twice, and nobody sits where there is no seat. */
export const seatsRule: Rule = (problem, plan) =>
  problem.turns.flatMap(({ stations }, turn) => {
    const left = new Map<number, number>()
    stations.forEach((seats, station) => {
      for (const role of seatRoles) left.set(seatPlace(station, role), seats[role])
    })
    for (const place of plan[turn] ?? []) if (place > resting) left.set(place, (left.get(place) ?? 0) - 1)
    return [...left.values()].every((count) => count === 0) ? [] : [{ rule: 'seats', turn, players: [] }]
  })
