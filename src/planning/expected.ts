import type { PlannedPlayer } from '#planning/practice-plan'
import { turnFrames } from '#planning/turn-frames'
import type { DesignRound } from '#practice/design'
import { isPresentThroughout, joinPresence } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

/**
 * For which turns the register so far has a player there and playing, as first and last turns counted from 1. The
 * practice is taken to begin with its first turn.
 */
export function presentByRegister(
  register: readonly RegisterLine[],
  of: { readonly playerId: PlayerId; readonly rounds: readonly DesignRound[] },
): PlannedPlayer['present'] {
  const here = joinPresence(register.filter(({ state }) => state === 'here'))
  let start = 0
  const isThere = turnFrames(of.rounds).map(({ seconds, gapSeconds }) => {
    const turn = { from: start, to: start + seconds }
    start = turn.to + gapSeconds
    return isPresentThroughout(here, of.playerId, turn)
  })
  return spansOf(isThere)
}

/** Runs of turns as first and last, counted from 1. */
export function spansOf(isThere: readonly boolean[]): PlannedPlayer['present'] {
  const spans: [number, number][] = []
  isThere.forEach((there, turn) => {
    const last = spans.at(-1)
    if (!there) return
    if (last && last[1] === turn) last[1] = turn + 1
    else spans.push([turn + 1, turn + 1])
  })
  return spans
}

/** What a player was expected for in a plan, in another with so many turns: whoever stayed to the end still does. */
export function presentInTurns(
  present: PlannedPlayer['present'],
  { before, after }: { readonly before: number; readonly after: number },
): PlannedPlayer['present'] {
  return present.flatMap(([from, to]): readonly (readonly [number, number])[] => {
    const last = to >= before ? after : Math.min(to, after)
    return from <= last ? [[from, last]] : []
  })
}
