import type { Seconds } from '#common/time'
import type { Role } from '#exposure/column'
import { agreedCauseOf, type Cause } from '#fairness/cause'
import { dueGapSeconds, type StandingFigure } from '#fairness/standing-figure'
import { dueStatusOf, type Status } from '#fairness/status'
import { toleranceSeconds } from '#fairness/tolerance'
import type { Policy } from '#squad/policy'

/** A player's figure as the season book shows it: what it had, what was due, which side of the band, and why. */
export type JudgedFigure = {
  readonly seconds: number
  readonly turns: number
  /** After agreements of fewer turns. */
  readonly dueSeconds: number
  readonly dueTurns: number
  /** Due after agreements less the even share: 0 or, for playing, negative. */
  readonly agreedSeconds: number
  readonly gapSeconds: number
  readonly toleranceSeconds: Seconds
  readonly status: Status
  /** Outside the band on the side that costs the player something: short of the ball, much waiting, much goal. */
  readonly isConcern: boolean
  /** As many turns as were due, give or take less than one, and yet short. */
  readonly isShorterTurns: boolean
  /**
   * The three parts with the agreement taken into account: `whileHere` is `gapSeconds`, and the three and `agreedSeconds`
   * add up to `differenceSeconds`. Null for guests, who stand outside every mean.
   */
  readonly cause: Cause | null
  /**
   * Whether the parts are worth reading: the figure, or the difference they add up to, is outside the band, and not by
   * being short of goal without wanting to keep.
   */
  readonly isCauseTold: boolean
}

type JudgeInput = {
  /** Null: playing in a situation or theme, whatever the role. */
  readonly role: Role | null
  readonly kind: 'practice' | 'match'
  readonly wantsToKeep: boolean
  readonly isMember: boolean
  readonly policy: Policy
}

export function judgeFigure(figure: StandingFigure, input: JudgeInput): JudgedFigure {
  const { policy, isMember, kind } = input
  const tolerance = toleranceSeconds(policy, figure.dueSeconds)
  const status = dueStatusOf(figure, policy)
  const gapSeconds = dueGapSeconds(figure)
  const cause = isMember ? agreedCauseOf(figure) : null
  return {
    seconds: figure.seconds,
    turns: figure.turns,
    dueSeconds: figure.dueSeconds,
    dueTurns: figure.dueTurns,
    agreedSeconds: figure.dueSeconds - figure.fairSeconds,
    gapSeconds,
    toleranceSeconds: tolerance,
    status,
    isConcern: isConcern({ ...input, status }),
    isShorterTurns: kind === 'practice' && status === 'short' && Math.abs(figure.turns - figure.dueTurns) < 1,
    cause,
    isCauseTold: cause !== null && isCauseTold({ ...input, status, cause, tolerance }),
  }
}

function isCauseTold(
  of: JudgeInput & { readonly status: Status; readonly cause: Cause; readonly tolerance: Seconds },
) {
  if (of.role === 'keep' && !of.wantsToKeep && of.cause.differenceSeconds < 0) return false
  return of.status !== 'within' || Math.abs(of.cause.differenceSeconds) > of.tolerance
}

/** Short of goal concerns only one who wants to keep; less waiting and more of the ball concern nobody. */
export function isConcern(
  of: Pick<JudgeInput, 'role' | 'wantsToKeep'> & { readonly status: Status },
): boolean {
  if (of.status === 'within') return false
  if (of.role === 'rest') return of.status === 'over'
  if (of.role === 'keep') return of.status === 'over' || of.wantsToKeep
  return of.status === 'short'
}
