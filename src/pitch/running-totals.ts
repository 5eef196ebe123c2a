import type { Seconds } from '#common/time'
import { type Role, roles } from '#exposure/column'
import { exposuresOf } from '#exposure/exposures'
import { practiceSpans } from '#exposure/practice-spans'
import { presenceOfPlayers } from '#pitch/pitch-presence'
import type { PitchState } from '#pitch/pitch-state'
import { type PlayedTurn, playedTurns } from '#pitch/played-turns'
import { turnsOfPitch } from '#pitch/turns-of-pitch'
import type { PlayerId } from '#squad/player'

/** What a player has had so far. Waiting is `rest`. */
export type RunningTotal = {
  readonly playerId: PlayerId
  readonly seconds: Readonly<Record<Role, Seconds>>
  readonly turns: Readonly<Record<Role, number>>
}

/** Everyone's turns and seconds up to a second of the practice, the live turn as far as it has got; in the register's order. */
export function runningTotals(state: PitchState, second: Seconds): readonly RunningTotal[] {
  const got = new Map(state.players.map(({ playerId }) => [playerId, nothing()]))
  const presence = presenceOfPlayers(state.players, Number.POSITIVE_INFINITY)
  const turns = turnsOfPitch(turnsUpTo(state, second), state)
  // The middle of a match is never played here.
  for (const { playerId, column, sums } of exposuresOf(practiceSpans({ register: presence, turns }), {
    middleAttackShare: 0.5,
  })) {
    const own = got.get(playerId) ?? nothing()
    own.seconds[column.role] += sums.seconds
    own.turns[column.role] += sums.turns
  }
  return [...got].map(([playerId, own]) => ({ playerId, ...own }))
}

/** What was played up to a second, the live turn cut there. */
export function turnsUpTo(state: PitchState, second: Seconds): readonly PlayedTurn[] {
  const { live, played, players } = state
  if (!live || second <= live.start) return played
  const presence = presenceOfPlayers(players, Number.POSITIVE_INFINITY)
  return [...played, ...playedTurns([{ ...live.timed, end: second }], presence).turns]
}

function nothing() {
  const none = () => Object.fromEntries(roles.map((role) => [role, 0])) as Record<Role, number>
  return { seconds: none(), turns: none() }
}
