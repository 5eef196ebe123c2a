import type { PracticeFault } from '#practice/checks/practice-fault'
import { seatsOfTurn } from '#practice/checks/seats-of-turn'
import type { Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** Nobody has two seats in one turn. The fault names the second one. */
export function checkOneSeatEach(turns: readonly Turn[]): readonly PracticeFault[] {
  return turns.flatMap((own, turn) => {
    const seated = new Set<PlayerId>()
    return seatsOfTurn(own).flatMap(({ playerId, ...seat }): readonly PracticeFault[] => {
      if (seated.has(playerId)) return [{ rule: 'seatedTwice', turn, playerId, seat }]
      seated.add(playerId)
      return []
    })
  })
}
