import type { Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** How often a side was given the choice of size, and how often a player was of that side. What was chosen is the side's. */
export type ChoiceCount = { readonly choosing: number; readonly presentFor: number }

/** `presentTurns`: turns the player was there for. Keepers choose with nobody. */
export function countChoices(presentTurns: readonly Turn[], playerId: PlayerId): ChoiceCount {
  const choiceTurns = presentTurns.filter((turn) => turn.chosenBy)
  const choosing = choiceTurns.filter((turn) =>
    turn.stations.some((station) => turn.chosenBy && station[turn.chosenBy].includes(playerId)),
  )
  return { choosing: choosing.length, presentFor: choiceTurns.length }
}
