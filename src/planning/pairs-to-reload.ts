import type { Problem } from '#common/problem'
import type { Day } from '#common/time'
import { type PlayerPair, pairsForgotten } from '#planning/player-pair'
import type { PlayerId } from '#squad/player'

type Two = readonly [PlayerId, PlayerId]

/** Whoever is kept apart is so in every plan of a practice or match, unless a coach lets the two meet in that one. */
export function pairsToReload(
  plan: {
    readonly players: readonly { readonly playerId: PlayerId }[]
    readonly apart: readonly Two[]
    readonly mayMeet?: readonly Two[]
  },
  of: {
    readonly pairs: readonly PlayerPair[]
    readonly day: Day
    readonly nameOf: (id: PlayerId) => string
  },
): readonly Problem[] {
  const planned = new Set(plan.players.map(({ playerId }) => playerId))
  return pairsForgotten(plan, of)
    .filter((pair) => pair.every((playerId) => planned.has(playerId)))
    .map(([one, other]) => ({
      path: '',
      message: `${of.nameOf(one)} and ${of.nameOf(other)} are kept apart on this day, which was noted since you opened the page. Reload it to plan with that.`,
    }))
}
