import { InvariantError } from '#common/result'

/**
 * What the fair share of a span depends on: how many are present, how many keeper seats there are, and how many of
 * those present may keep (whoever in fact kept counts as able).
 */
export type Places = { readonly present: number; readonly keeperSeats: number; readonly able: number }

/**
 * The part of a span that a player who may keep goal is due of keeping: keeper seats ÷ able players.
 *
 * With `fairSeatShare` it is the most even table of one unit a player over the columns of a span: of all tables whose
 * rows are one, whose columns are their seats and which put nobody in goal who may not keep, the one of maximum
 * entropy. Iterative proportional fitting from a table of ones, zero where a player may not keep, tends to it.
 * Source: W. E. Deming & F. F. Stephan, "On a least squares adjustment of a sampled frequency table when the expected
 * marginal totals are known", Ann. Math. Statist. 11 (1940) 427-444, for the fitting; the closed form is our own.
 * @throws InvariantError when there are more keeper seats than able players.
 */
export function fairKeepShare(places: Places, isAble: boolean): number {
  if (places.keeperSeats > places.able || places.able > places.present) {
    throw new InvariantError('More keeper seats than players who may keep.', places)
  }
  return isAble && places.keeperSeats > 0 ? places.keeperSeats / places.able : 0
}

/**
 * The part of a span that a player is due of a column other than keeping, rest included: of what keeping leaves of its
 * unit, `seats` ÷ everyone who is not in goal. 0 when all are in goal.
 */
export function fairSeatShare(
  places: Places,
  seat: { readonly seats: number; readonly isAble: boolean },
): number {
  const outOfGoal = places.present - places.keeperSeats
  if (outOfGoal <= 0 || seat.seats === 0) return 0
  return (1 - fairKeepShare(places, seat.isAble)) * (seat.seats / outOfGoal)
}

/** The same span with one more player there, for the fair share of someone who was away. There is one more to rest. */
export function withOneMore(places: Places, isAble: boolean): Places {
  return { ...places, present: places.present + 1, able: places.able + (isAble ? 1 : 0) }
}

/** The same span if everyone present took a turn in goal. */
export function withOpenGoal(places: Places): Places {
  return { ...places, able: places.present }
}
