import type { WrittenCount } from '#fairness/book/written-count'
import type { MatchRow } from '#fairness/matches/match-rows'
import type { ShareRange } from '#fairness/matches/share-range'
import type { Season } from '#squad/squad'
import { WrittenLine } from '#ui/book/written-line'
import { formatDays } from '#ui/format-day'
import { rangeSentence, widestSentence } from '#ui/matches/match-sentences'

type MatchBookLeadProps = {
  readonly season: Season
  readonly days: { readonly from: string; readonly to: string } | null
  readonly written: WrittenCount
  readonly members: readonly MatchRow[]
  readonly range: ShareRange | null
}

/** What the page rests on, and the one sentence of it. */
export function MatchBookLead({ season, days, written, members, range }: MatchBookLeadProps) {
  const widest = widestSentence(
    members.map(({ player, played }) => ({ name: player.name, gapSeconds: played.gapSeconds })),
  )
  return (
    <>
      <p>
        {season.name}
        {days ? `, ${formatDays({ firstDay: days.from, lastDay: days.to })}` : ''}
      </p>
      {days ? <WrittenLine count={written} kind="match" /> : <p>None of these days has come yet.</p>}
      {range && written.isEnough ? (
        <p>
          {rangeSentence({ matches: written.written, least: range.least.share, most: range.most.share })}{' '}
          {widest}
        </p>
      ) : null}
    </>
  )
}
