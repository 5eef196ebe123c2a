import { daysLater } from '#common/days-later'
import type { Day } from '#common/time'

/** Days on which a squad's coach can answer an opened review, the day of opening included. */
export const daysToAnswer = 7

/** From when on a review is final: on that day and after it, it can no longer be answered. */
export function finalOn({ openedOn }: { readonly openedOn: Day }): Day {
  return daysLater(openedOn, daysToAnswer)
}

export function isFinal(review: { readonly openedOn: Day }, today: Day): boolean {
  return today >= finalOn(review)
}
