import type { Finding } from '#fairness/flags/flag-rule'
import { dueGapSeconds, type StandingFigure } from '#fairness/standing-figure'
import { dueStatusOf, type Status } from '#fairness/status'
import { toleranceSeconds } from '#fairness/tolerance'
import type { Policy } from '#squad/policy'

type Question = {
  readonly figure: StandingFigure
  readonly side: Exclude<Status, 'within'>
  readonly policy: Policy
  readonly subject?: string
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
