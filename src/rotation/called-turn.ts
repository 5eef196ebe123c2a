import { owedSeconds } from '#rotation/first-plan'
import { keeperChains } from '#rotation/keeper-chains'
import { mayServe } from '#rotation/limits'
import { mayTakeIn } from '#rotation/may-take'
import { away, resting, roleIndexOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { type RotationProblem, restsAlone } from '#rotation/problem'
import { seatTurn } from '#rotation/seat-turn'

/** What each counts when a called turn has to change: another's place is worth more than who comes on for a hole. */
const moved = 1e10
/** Who never rests alone comes on sooner than anybody else, but nobody goes off for it in a turn that is called. */
const lonely = 1e9
const justCome = 1e8
const tooLong = 1e7

/**
 * The first turn of a request once more, after it was called as `called[0]` and who is there has changed: everyone has
 * the place called, the places of those who left go to whoever waits and is owed most, and who has just come waits. Where
 * that cannot be, as few places change as can. `called`: also the turns called after it, so that nobody comes into goal
 * for a round who was called elsewhere meanwhile. Null: the turn cannot be filled.
 */
export function refillTurn(rest: RotationProblem, called: RotationPlan): readonly number[] | null {
  const players = rest.players.map((own) => ({ ...own, neverRestsAlone: false }))
  const mayTake = mayTakeIn({ ...rest, players })
  const isLonely = restsAlone(rest, 0)
  const owed = owedSeconds(rest)
  const seconds = rest.turns[0]?.seconds ?? 0
  const chains = keeperChains(rest).filter(({ turns }) => turns[0] === 0)
  const limit = rest.restLimit ?? Number.POSITIVE_INFINITY
  return seatTurn(rest, mayTake, {
    turn: 0,
    cost: (player, place) => {
      const before = called[0]?.[player] ?? away
      if (place === resting && isLonely && rest.players[player]?.neverRestsAlone) return lonely
      if (place === before) return 0
      if (before > resting) return moved
      const rested = rest.players[player]?.restedBefore ?? 0
      if (place === resting) return rested >= limit ? tooLong * (1 + rested - limit) : 0
      const index = player * 4 + roleIndexOf(place)
      const owes = (owed[index] as number) - seconds
      // Between two who are owed the same, whoever has waited longer comes on.
      const due = owes ** 2 - (owed[index] as number) ** 2 - rested * seconds ** 2
      const chain = chains.find((own) => own.place === place)
      const elsewhere = chain ? movesOnTheWay(rest, called, { player, turns: chain.turns, place }) : 0
      const costsLater = elsewhere + (chain ? 0 : missedLater(rest, called, player))
      return due + (before === away ? justCome : 0) + moved * costsLater
    },
  })
}

/** Whether coming on now would cost a player a later called turn, by what it agreed to. */
function missedLater(rest: RotationProblem, called: RotationPlan, player: number): 0 | 1 {
  const { mostTurns, restsAfterTurn } = rest.players[player] ?? {}
  const later = called.slice(1).map((places) => (places[player] ?? away) > resting)
  if (restsAfterTurn && later[0]) return 1
  return mostTurns != null && later.filter((isOn) => isOn).length >= mostTurns ? 1 : 0
}

/** How many called turns would change if the player kept goal through these. */
function movesOnTheWay(
  rest: RotationProblem,
  called: RotationPlan,
  duty: { readonly player: number; readonly turns: readonly number[]; readonly place: number },
): number {
  const there = duty.turns.filter((turn) => rest.players[duty.player]?.present[turn])
  const elsewhere = there.filter((turn) => {
    const place = called[turn]?.[duty.player] ?? resting
    return place > resting && place !== duty.place
  })
  return elsewhere.length + (mayServe(rest.players[duty.player], there) ? 0 : duty.turns.length)
}
