import { daysLater } from '#common/days-later'
import type { Day } from '#common/time'
import type { PolicyVersion } from '#squad/policy'

/** From when to when a version held. `to` null: until further notice. */
export type PolicyHold<Version extends PolicyVersion = PolicyVersion> = {
  readonly version: Version
  readonly from: Day
  readonly to: Day | null
  readonly state: 'toCome' | 'inForce' | 'past' | 'replacedSameDay'
}

/**
 * The versions made for one age band (null: for the whole club) with the days on which they held, the newest first.
 * `versions`: the newest first, and of two from one day the later made first.
 */
export function policyHistory<Version extends PolicyVersion>(
  versions: readonly Version[],
  at: { readonly ageLimit: number | null; readonly today: Day },
): readonly PolicyHold<Version>[] {
  const own = versions.filter(({ ageLimit }) => ageLimit === at.ageLimit)
  return own.map((version, index) => {
    const next = own[index - 1]
    const from = version.effectiveFrom
    const to = next ? daysLater(next.effectiveFrom, -1) : null
    return { version, from, to, state: stateOf({ from, to, today: at.today }) }
  })
}

function stateOf({
  from,
  to,
  today,
}: {
  readonly from: Day
  readonly to: Day | null
  readonly today: Day
}): PolicyHold['state'] {
  if (to !== null && to < from) return 'replacedSameDay'
  if (from > today) return 'toCome'
  return to === null || today <= to ? 'inForce' : 'past'
}
