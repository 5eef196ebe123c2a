import type { Deed } from '#pitch/pitch-event'
import type { Choice, PitchState } from '#pitch/pitch-state'
import { runningTotals } from '#pitch/running-totals'
import type { UpcomingRound } from '#pitch/upcoming'
import type { PlannedTurn } from '#planning/practice-plan'
import type { SizeChoice } from '#practice/design'
import { seatRoles } from '#practice/turn'
import type { PlayerId } from '#squad/player'
import { type Cast, sideOfRole } from '#ui/pitch/cast'
import { type Sized, sized } from '#ui/pitch/choice-size'
import { roundDone } from '#ui/pitch/round-deeds'

type Sizes = readonly SizeChoice[]

/** For each ball left of a round the choice that was tapped; null: none. */
export function choicesOf(round: UpcomingRound, choices: readonly Choice[]): readonly (Choice | null)[] {
  return round.turns.map(({ index }) => choices.find(({ turn }) => turn === index) ?? null)
}

/** The size that a turn is planned in; null: it is none of those that can be chosen. */
export function plannedSize({ stations }: PlannedTurn, sizes: Sizes): number | null {
  const found = sizes.findIndex(({ shape }) =>
    stations.every((station) => seatRoles.every((role) => station[role].length === shape[role])),
  )
  return found < 0 ? null : found
}

/** A size was chosen once more: for the first ball that nothing was tapped of. Empty: every ball has its size. */
export function oneMore(
  size: number,
  { round, choices, cast }: { round: UpcomingRound; choices: readonly Choice[]; cast: Cast },
): readonly Deed[] {
  const place = choicesOf(round, choices).indexOf(null)
  const turn = place < 0 ? undefined : round.turns[place]
  return turn ? [choiceDeed(size, { turn, round, cast })] : []
}

/** A size was chosen once less: the last ball that was tapped with it has none again. */
export function oneLess(size: number, of: { round: UpcomingRound; choices: readonly Choice[] }) {
  const last = choicesOf(of.round, of.choices).findLast((choice) => choice?.size === size)
  return last ? [{ kind: 'undo', undoes: last.eventId } as const] : []
}

/**
 * The round is over after so many balls. Where sizes are chosen, each ball has the places of its size: the one that was
 * tapped, else the planned one, which is written down as chosen. What was tapped of balls that were not played goes.
 */
export function roundDoneDeeds(
  state: PitchState,
  { round, balls, cast }: { readonly round: UpcomingRound; readonly balls: number; readonly cast: Cast },
): readonly Deed[] {
  const done = roundDone(state, round, balls)
  const sizes = round.design?.choice?.sizes
  if (!sizes) return [done]
  const before = done.turns.length - balls
  const said = choicesOf(round, state.choices)
  const had = turnsHad(state)
  const chosen: Deed[] = []
  const turns = done.turns.map((turn, place): PlannedTurn => {
    const own = round.turns[place - before]
    if (!own) return turn
    const tapped = said[place - before]?.size ?? null
    const size = tapped ?? plannedSize(turn, sizes)
    const shape = size === null ? undefined : sizes[size]?.shape
    if (size === null || !shape) return turn
    if (tapped === null) chosen.push(choiceDeed(size, { turn: own, round, cast }))
    if (size === plannedSize(turn, sizes)) {
      had.count(own.stations)
      return turn
    }
    // Whoever is not there steps off first.
    const { stations } = sized(own.stations, shape, had.totals())
    had.count(stations)
    return { ...turn, stations }
  })
  const unplayed = said.slice(balls).flatMap((choice) => choice ?? [])
  return [
    { ...done, turns },
    ...chosen,
    ...unplayed.map(({ eventId }) => ({ kind: 'undo', undoes: eventId }) as const),
  ]
}

/** Who would step off in the next ball if a size were chosen for it. */
export function steppingOff(state: PitchState, round: UpcomingRound, size: SizeChoice): Sized['stepsOff'] {
  const place = choicesOf(round, state.choices).indexOf(null)
  const stations = round.turns[place]?.stations ?? []
  return sized(stations, size.shape, runningTotals(state, 0)).stepsOff
}

function choiceDeed(
  size: number,
  { turn, round, cast }: { turn: UpcomingRound['turns'][number]; round: UpcomingRound; cast: Cast },
): Extract<Deed, { kind: 'choice' }> {
  const by = round.design?.choice?.by ?? 'coach'
  const [first] = turn.stations
  const side = by === 'attack' && first ? sideOfRole(first, 'attack', cast) : null
  return { kind: 'choice', turn: turn.index, by, size, side }
}

/** Turns that everyone has had, the balls of this round as they are counted. */
function turnsHad(state: PitchState) {
  const had = new Map(runningTotals(state, 0).map(({ playerId, turns }) => [playerId, { ...turns }]))
  return {
    totals: () => [...had].map(([playerId, turns]) => ({ playerId, turns })),
    count: (stations: PlannedTurn['stations']) => {
      const add = (playerId: PlayerId, role: (typeof seatRoles)[number]) => {
        const own = had.get(playerId)
        if (own) own[role] += 1
      }
      for (const station of stations)
        for (const role of seatRoles) for (const playerId of station[role]) add(playerId, role)
    },
  }
}
