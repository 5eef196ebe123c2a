import type { WrittenCount } from '#fairness/book/written-count'
import type { Season } from '#squad/squad'
import { WrittenLine } from '#ui/book/written-line'
import { formatDays } from '#ui/format-day'

type SeasonBookLeadProps = {
  readonly season: Season
  readonly days: { readonly from: string; readonly to: string } | null
  readonly filter: { readonly kind: 'practice' | 'match' }
  readonly written: WrittenCount
}

/** What the page rests on: the days, and how much of them is written down. */
export function SeasonBookLead({ season, days, filter, written }: SeasonBookLeadProps) {
  return (
    <>
      <p>
        {season.name}
        {days ? `, ${formatDays({ firstDay: days.from, lastDay: days.to })}` : ''}
      </p>
      {days ? <WrittenLine count={written} kind={filter.kind} /> : <p>None of these days has come yet.</p>}
    </>
  )
}
