import type { PitchState } from '#pitch/pitch-state'
import type { DesignRound } from '#practice/design'
import { counted } from '#ui/plural'

/** Which ball of its round a turn of the plan is, from 1. */
export function ballNumber({ turns }: Pick<PitchState, 'turns'>, index: number): number {
  const round = turns[index]?.round
  return turns.slice(0, index).filter((turn) => turn.round === round).length + 1
}

/** How many balls a round has. */
export function ballsOf({ turns }: Pick<PitchState, 'turns'>, round: number | null): number {
  return turns.filter((turn) => turn.round === round).length
}

/** "6 balls"; of a free game "2 halves". */
export function ballsWords(count: number, design: Pick<DesignRound, 'isFreeGame'> | null): string {
  return design?.isFreeGame ? counted(count, 'half', 'halves') : counted(count, 'ball')
}

/** "Ball 3"; of a free game "First half". */
export function ballTitle(number: number, design: Pick<DesignRound, 'isFreeGame'> | null): string {
  if (!design?.isFreeGame) return `Ball ${number}`
  return number % 2 === 1 ? 'First half' : 'Second half'
}
