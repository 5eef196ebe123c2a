import type { Seconds } from '#common/time'
import type { AreaShape, DesignRound } from '#practice/design'

/** One turn of a design before anyone is seated in it. */
export type TurnFrame = {
  /** Place of its round in the list of rounds, from 0. */
  readonly round: number
  readonly seconds: Seconds
  readonly gapSeconds: Seconds
  readonly stations: readonly AreaShape[]
  /** Of a free game: its first half, or the second, in which the sides have swapped roles. Null: no free game. */
  readonly half: 0 | 1 | null
}

/**
 * The turns of some rounds in order. Turns of a free game go in pairs: in the second of each the sides have swapped
 * attack and defence, so that as many attack as defended before.
 */
export function turnFrames(rounds: readonly DesignRound[]): readonly TurnFrame[] {
  return rounds.flatMap((round, index) =>
    Array.from({ length: round.turnCount }, (_, turn): TurnFrame => {
      const half = round.isFreeGame ? ((turn % 2) as 0 | 1) : null
      return {
        round: index,
        seconds: round.turnSeconds,
        gapSeconds: round.gapSeconds,
        stations: half === 1 ? round.stations.map(swapped) : round.stations,
        half,
      }
    }),
  )
}

function swapped({ attack, defend, keep }: AreaShape): AreaShape {
  return { attack: defend, defend: attack, keep }
}
