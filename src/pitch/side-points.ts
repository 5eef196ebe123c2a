import type { AreaEnding } from '#pitch/pitch-event'
import type { PlayedTurn } from '#pitch/played-turns'
import type { EventOf } from '#pitch/standing-events'

export type PitchSide = Exclude<AreaEnding['side'], null>

/** What a side won in one round, or in turns that the plan does not know. Points belong to a side and a practice. */
export type SidePoints = {
  readonly round: number | null
  readonly side: PitchSide
  readonly points: number
}

/** Points of every side, round by round: from the balls tapped one by one, and what was said of the others in all. */
export function sidePoints(
  played: readonly Pick<PlayedTurn, 'round' | 'endings'>[],
  said: readonly EventOf<'points'>[],
): readonly SidePoints[] {
  const sums = new Map<string, SidePoints>()
  const add = (won: SidePoints) => {
    const key = `${won.round} ${won.side}`
    sums.set(key, { ...won, points: (sums.get(key)?.points ?? 0) + won.points })
  }
  for (const { round, endings } of played) {
    for (const { side, points } of endings) if (side !== null && points !== 0) add({ round, side, points })
  }
  const lastSaid = new Map(said.map(({ deed }) => [`${deed.round} ${deed.side}`, deed]))
  for (const { round, side, points } of lastSaid.values()) add({ round, side, points })
  return [...sums.values()].sort(
    (a, b) => (a.round ?? -1) - (b.round ?? -1) || String(a.side).localeCompare(String(b.side)),
  )
}
