import type { Finding } from '#fairness/flags/flag-rule'
import { dueGapSeconds, type StandingFigure } from '#fairness/standing-figure'
import { type Status, statusOf } from '#fairness/status'
import { toleranceSeconds } from '#fairness/tolerance'
import type { Policy } from '#squad/policy'

type Question = {
  readonly figure: StandingFigure
  readonly side: Exclude<Status, 'within'>
  readonly policy: Policy
  readonly subject?: string
}

/** Of what is due after agreements, the side of the band a figure is on. */
export function dueStatusOf(figure: StandingFigure, policy: Policy): Status {
  return statusOf({ seconds: figure.seconds, fairSeconds: figure.dueSeconds }, policy)
}

/** The gap of a figure, whatever its side. */
export function measureColumn({ figure, policy, subject = '' }: Omit<Question, 'side'>): Finding {
  const gapSeconds = dueGapSeconds(figure)
  return {
    subject,
    gapSeconds,
    toleranceSeconds: toleranceSeconds(policy, figure.dueSeconds),
    size: Math.abs(gapSeconds),
    turnGap: figure.turns - figure.dueTurns,
  }
}

/** One finding when the figure is outside the band on the side asked about, none otherwise. */
export function judgeColumn(question: Question): readonly Finding[] {
  return dueStatusOf(question.figure, question.policy) === question.side ? [measureColumn(question)] : []
}

/** For who never had a turn: "the same number of turns" would say nothing. */
export function withoutTurnGap({ turnGap: _, ...finding }: Finding): Finding {
  return finding
}
