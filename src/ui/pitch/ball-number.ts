import type { PitchState } from '#pitch/pitch-state'

/** Which ball of its round a turn of the plan is, from 1. */
export function ballNumber({ turns }: Pick<PitchState, 'turns'>, index: number): number {
  const round = turns[index]?.round
  return turns.slice(0, index).filter((turn) => turn.round === round).length + 1
}

/** How many balls a round has. */
export function ballsOf({ turns }: Pick<PitchState, 'turns'>, round: number | null): number {
  return turns.filter((turn) => turn.round === round).length
}
