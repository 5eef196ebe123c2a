import type { SearchSettings } from '#common/search-settings'

/** How much may still be done, by the clock and by a count of work that is the same on every machine. */
export type Deadline = {
  readonly leftMs: () => number
  /** Units of work left; null: only the clock counts. */
  readonly leftWork: () => number | null
  readonly spend: (work: number) => void
}

/**
 * Work that any machine does in a millisecond. It sets how much of `workLimit` may count, so that the clock never ends a
 * search that has to be repeatable.
 */
const surePerMs = 0.1

type Limits = Omit<SearchSettings, 'seed'> & { readonly began: number }

export function setDeadline({ began, timeLimitMs, workLimit }: Limits): Deadline {
  let work = workLimit === null ? null : Math.min(workLimit, Math.floor(timeLimitMs * surePerMs))
  return {
    leftMs: () => began + timeLimitMs - performance.now(),
    leftWork: () => work,
    spend: (spent) => {
      if (work !== null) work = Math.max(0, work - spent)
    },
  }
}

/**
 * How long one of several searches may take that are made one after another, `index` of them over: an even share of what
 * is left; of the whole where work is counted, as otherwise the clock would say how much each may do.
 */
export function shareOfTime(
  { began, timeLimitMs, workLimit }: Limits,
  { searches, index }: { readonly searches: number; readonly index: number },
): number {
  if (workLimit !== null) return timeLimitMs / searches
  return (began + timeLimitMs - performance.now()) / (searches - index)
}

/** Nothing more is to be begun; where work is counted, that alone decides. */
export function isUp(deadline: Pick<Deadline, 'leftMs' | 'leftWork'>): boolean {
  const work = deadline.leftWork()
  return work === null ? deadline.leftMs() <= 0 : work <= 0
}
