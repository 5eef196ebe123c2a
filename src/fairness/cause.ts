import type { Role } from '#exposure/column'
import { gapSeconds } from '#fairness/gap'
import type { KindStanding } from '#fairness/standing'
import { dueGapSeconds, type StandingFigure } from '#fairness/standing-figure'

export const causeParts = ['missed', 'goalDuty', 'whileHere'] as const
export type CausePart = (typeof causeParts)[number]

/**
 * Why a player's share differs from what the members of its squad would on average have been due, there for everything:
 * three parts in seconds that add up to the difference. The coach answers for `whileHere` only.
 */
export type Cause = Readonly<Record<CausePart, number>> & { readonly differenceSeconds: number }

/** Reckoned with even shares as they are, before any agreement. Meant for members: guests stand outside every mean. */
export function causeOf(figure: StandingFigure): Cause {
  return {
    missed: figure.fairSeconds - figure.fullFairSeconds,
    goalDuty: figure.fullFairSeconds - figure.membersMeanSeconds,
    whileHere: gapSeconds(figure),
    differenceSeconds: figure.seconds - figure.membersMeanSeconds,
  }
}

/**
 * The same with agreements of fewer turns taken into account: what was agreed is no part of `whileHere`, so the parts add
 * up to the difference less what the agreement takes off the due.
 */
export function agreedCauseOf(figure: StandingFigure): Cause {
  return { ...causeOf(figure), whileHere: dueGapSeconds(figure) }
}

/** The part that says most about a difference: the largest of those on its side. Null when there is none. */
export function mainPart(cause: Cause): CausePart | null {
  const side = Math.sign(cause.differenceSeconds)
  const largest = causeParts.reduce((best, part) => (cause[part] * side > cause[best] * side ? part : best))
  return cause[largest] * side > 0 ? largest : null
}

/** Goal can hide everything: from this part of a player's time in goal on, the open-goal dues are printed beside its own. */
export const openGoalShare = 1 / 3

/** What a player would have been due if everyone had taken a turn in goal; null when it kept no more than a third of its time. */
export function openGoalDue(standing: KindStanding): Readonly<Record<Role, number>> | null {
  if (standing.roles.keep.seconds <= openGoalShare * standing.liveSeconds) return null
  const due = (role: Role) => standing.roles[role].openGoalFairSeconds
  return { attack: due('attack'), defend: due('defend'), keep: due('keep'), rest: due('rest') }
}
