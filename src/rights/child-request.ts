import type { Day } from '#common/time'
import { dueDay, monthsMore, monthsToAnswer } from '#rights/due-day'
import type { PlayerId } from '#squad/player'

export const requestKinds = ['copy', 'correction', 'erasure', 'objection', 'question'] as const
export type RequestKind = (typeof requestKinds)[number]

export const requestOutcomes = ['done', 'refused', 'withdrawn'] as const
export type RequestOutcome = (typeof requestOutcomes)[number]

/** Letters of what a family writes, of an answer, and of why it takes longer. */
export const requestLimits = { text: 2000, answer: 2000, why: 600, aDay: 5 } as const

/** What a family asks about what is kept of its child. */
export type ChildRequest = {
  readonly id: string
  readonly playerId: PlayerId
  readonly kind: RequestKind
  /** In the family's own words. */
  readonly text: string
  /** Null: it came by word of mouth or letter. */
  readonly askedById: string | null
  readonly receivedOn: Day
  readonly dueOn: Day
  /** Null: no longer time was taken. */
  readonly extendedTo: Day | null
  readonly extendedWhy: string
  /** Null: open. */
  readonly outcome: RequestOutcome | null
  /** What the family is told. */
  readonly answer: string
  readonly answeredAt: Date | null
}

/** The last day to answer it. */
export function lastDayOf({ dueOn, extendedTo }: Pick<ChildRequest, 'dueOn' | 'extendedTo'>): Day {
  return extendedTo ?? dueOn
}

/** The days that a request received on a day is given. */
export function dueDays(
  receivedOn: Day,
  holidays: readonly Day[],
): { readonly dueOn: Day; readonly latest: Day } {
  return {
    dueOn: dueDay(receivedOn, { months: monthsToAnswer, holidays }),
    latest: dueDay(receivedOn, { months: monthsToAnswer + monthsMore, holidays }),
  }
}

/** Why more time cannot be taken; null when it can. The family is to hear of it inside the first month. */
export function whyNotExtend(
  request: Pick<ChildRequest, 'outcome' | 'extendedTo' | 'dueOn'>,
  today: Day,
): 'answered' | 'extended' | 'tooLate' | null {
  if (request.outcome !== null) return 'answered'
  if (request.extendedTo !== null) return 'extended'
  return today > request.dueOn ? 'tooLate' : null
}

/** Open ones first, the most urgent at the top; then those answered, the latest first. */
export function inOrderOfUrgency<Request extends ChildRequest>(
  requests: readonly Request[],
): readonly Request[] {
  const open = requests.filter(({ outcome }) => outcome === null)
  const closed = requests.filter(({ outcome }) => outcome !== null)
  return [
    ...open.toSorted((a, b) => compare(lastDayOf(a), lastDayOf(b)) || compare(a.id, b.id)),
    ...closed.toSorted((a, b) => (b.answeredAt?.getTime() ?? 0) - (a.answeredAt?.getTime() ?? 0)),
  ]
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
