import type { Seconds } from '#common/time'
import type { LinePlaces } from '#match/format/match-format'
import type { PlayerId } from '#squad/player'
import { changeOfPlan } from '#touchline/change-of-plan'
import type { PlacedPlayer } from '#touchline/match-deed'
import type { Call } from '#touchline/match-state'
import type { SettledSet } from '#touchline/plans-in-force'
import type { MadeChange } from '#touchline/walk-match'

/** A change is called so long before it is due: from then on no new plan touches it. */
export const calledSeconds = 60
/** A change that is due stays on the card so long for a tap that says late, or not. */
const lingersSeconds = 60

/**
 * What is to be called in the running period, one after the other, each as it will be if those before it are made. What
 * became due just now comes first: it counts as made, and can still be tapped as late or as not made.
 */
export function callsOf(match: {
  readonly period: number
  /** Of the period. */
  readonly second: Seconds
  readonly sets: readonly SettledSet[]
  readonly handled: ReadonlySet<SettledSet>
  readonly made: readonly MadeChange[]
  readonly on: readonly PlacedPlayer[]
  readonly places: LinePlaces
  /** By the second of the plan, for those who are planned to come. */
  readonly isAble: (id: PlayerId, due: Seconds) => boolean
  readonly keeps: (id: PlayerId) => boolean
}): readonly Call[] {
  const { period, second, sets, handled, made, places, isAble, keeps } = match
  let on = match.on
  const coming: Call[] = []
  for (const set of sets) {
    if (set.period !== period || handled.has(set) || set.second <= second) continue
    // Made late as tapped, or called off: nothing is to be called any more.
    if (set.settledBy !== null) continue
    const change = changeOfPlan(set, { on, places, isAble: (id) => isAble(id, set.due), keeps })
    on = change.after
    if (isNothing(change)) continue
    const toGo = set.second - second
    coming.push({ ...change, due: set.due, period, second: set.second, secondsToGo: toGo, isDue: false })
  }
  const last = made.at(-1)
  const next = coming[0]
  const isFresh =
    last &&
    !last.isTapped &&
    last.set.period === period &&
    !isNothing(last) &&
    second - last.second <= lingersSeconds &&
    (!next || next.secondsToGo > calledSeconds / 2)
  if (!isFresh) return coming
  const { off, on: comingOn, moved, missing, after, set } = last
  const due: Call = {
    ...{ off, on: comingOn, moved, missing, after, period },
    due: set.due,
    second: last.second,
    secondsToGo: last.second - second,
    isDue: true,
  }
  return [due, ...coming]
}

function isNothing({ off, on, moved, missing }: Pick<Call, 'off' | 'on' | 'moved' | 'missing'>): boolean {
  return off.length + on.length + moved.length + missing.length === 0
}
