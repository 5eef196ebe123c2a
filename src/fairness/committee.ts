import type { Evenness } from '#fairness/evenness'

/** A count for people outside the coaching staff: groups of one to four could point at a child and are hidden. */
export type GuardedCount = { readonly hidden: true } | { readonly hidden: false; readonly count: number }

export const smallestGroup = 5

/** Zero says nothing of anyone, so it stays. */
export function guardCount(count: number): GuardedCount {
  return count > 0 && count < smallestGroup ? { hidden: true } : { hidden: false, count }
}

/**
 * A part of a group. When either side of the cut is a small group both are hidden, for one could be had from the other;
 * then only whether it is more than half is told.
 */
export type GuardedPart =
  | { readonly hidden: false; readonly count: number; readonly of: number }
  | { readonly hidden: true; readonly isMoreThanHalf: boolean | null }

export function guardPart({ count, of }: { readonly count: number; readonly of: number }): GuardedPart {
  const isSmall = (group: number) => group > 0 && group < smallestGroup
  if (of < smallestGroup) return { hidden: true, isMoreThanHalf: null }
  return isSmall(count) || isSmall(of - count)
    ? { hidden: true, isMoreThanHalf: count > of / 2 }
    : { hidden: false, count, of }
}

/** A squad's review as a committee may have it. */
export type CommitteeRow = {
  readonly written: Evenness['written']
  /** Null: not enough written down to say. */
  readonly said: {
    readonly members: GuardedCount
    readonly withinBand: GuardedPart
    readonly flagsOpen: GuardedCount
    readonly flagsAnswered: GuardedCount
    /** Null in a squad of fewer than five. */
    readonly jainPlayed: number | null
    readonly giniPlayed: number | null
  } | null
}

/** No name, no number of any one child: the widest difference is one child's and stays out. */
export function committeeRow(
  evenness: Evenness,
  flags: { readonly open: number; readonly answered: number },
): CommitteeRow {
  const { written, said } = evenness
  if (!said) return { written, said: null }
  const isLarge = said.members >= smallestGroup
  return {
    written,
    said: {
      members: guardCount(said.members),
      withinBand: guardPart({ count: said.withinBand, of: said.members }),
      flagsOpen: guardCount(flags.open),
      flagsAnswered: guardCount(flags.answered),
      jainPlayed: isLarge ? said.indices.played.jain : null,
      giniPlayed: isLarge ? said.indices.played.gini : null,
    },
  }
}
