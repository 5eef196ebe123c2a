import type { Day } from '#common/time'

type OnDay = { readonly day: Day }

/** A column of the grid: one match, or all of a day that had several. */
export type MatchColumn<Match extends OnDay> =
  | { readonly of: 'match'; readonly match: Match }
  | { readonly of: 'day'; readonly day: Day; readonly matches: readonly Match[] }

/** A column for each match, in the order given, and after the last of a day with several one for all of them. */
export function matchColumns<Match extends OnDay>(matches: readonly Match[]): readonly MatchColumn<Match>[] {
  return matches.flatMap((match, index): readonly MatchColumn<Match>[] => {
    const own = { of: 'match', match } as const
    const ofDay = matches.filter(({ day }) => day === match.day)
    const isLast = matches[index + 1]?.day !== match.day
    return isLast && ofDay.length > 1 ? [own, { of: 'day', day: match.day, matches: ofDay }] : [own]
  })
}
