import type { Dealer } from '#ahead/chance/dealer'
import type { PracticeToDeal } from '#ahead/chance/practice-to-deal'
import type { Standing } from '#ahead/chance/standing'

/** Plays a practice for those who came, as a dealer deals. */
export type PracticePlayer = (at: number, came: Uint8Array, standing: Standing) => void

/** Plays practices of a plan by their place; where nothing is chosen nothing is played. */
export function practicePlayer(
  practices: readonly (PracticeToDeal | null)[],
  { playerCount, deal }: { readonly playerCount: number; readonly deal: Dealer },
): PracticePlayer {
  const here = new Int32Array(playerCount)
  return (at, came, standing) => {
    const practice = practices[at]
    if (!practice) return
    let count = 0
    for (let player = 0; player < playerCount; player++)
      if (came[at * playerCount + player]) here[count++] = player
    deal(practice, { here, count }, standing)
  }
}
