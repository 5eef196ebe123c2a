import type { BookRow } from '#fairness/book/book-rows'
import type { DayAttended } from '#fairness/book/player-attendance'
import type { PlayerWeek } from '#fairness/book/player-weeks'
import type { WrittenCount } from '#fairness/book/written-count'
import type { BelowPromise } from '#fairness/matches/below-promise'
import { BookTable } from '#ui/book/book-table'
import { GapLines, type GapSeries, GapTable } from '#ui/charts/gap-lines'
import { GapLinesLive } from '#ui/charts/gap-lines-live'
import { balanceSpanSeconds } from '#ui/figures/balance-geometry'
import { type OwnMatch, PlayerMatches } from '#ui/matches/player-matches'
import { Empty } from '#ui/page/empty'
import { Notice } from '#ui/page/notice'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { type Agreed, AgreedList } from '#ui/player/agreed-list'
import { AttendanceList } from '#ui/player/attendance-list'
import { choiceSentence, passedSentence } from '#ui/player/notes'
import { PlayerWeeksChart } from '#ui/player/player-weeks-chart'
import { type SituationFigure, SituationsTable } from '#ui/player/situations-table'
import { type NamedMeeting, ThemesMet } from '#ui/player/themes-met'
import { words } from '#ui/words'

type PlayerBodyProps = {
  readonly kind: 'practice' | 'match'
  readonly written: WrittenCount
  readonly row: BookRow | null
  readonly weeks: readonly PlayerWeek[]
  readonly gaps: readonly GapSeries[]
  readonly situations: readonly SituationFigure[]
  readonly themes: readonly NamedMeeting[]
  readonly attendance: readonly DayAttended[]
  readonly choices: { readonly chose: number; readonly choiceTurns: number } | null
  readonly agreed: readonly Agreed[]
  readonly squad: { readonly id: string }
  readonly matches: readonly OwnMatch[]
  readonly below: readonly BelowPromise[]
}

/** A player's season in practices or in matches. Its flags stand above, both kinds together. */
export function PlayerBody(props: PlayerBodyProps) {
  const { kind, written, row, weeks, gaps, attendance, agreed } = props
  return (
    <>
      {written.written > 0 && !written.isEnough ? <Notice>{words.notEnoughWritten}</Notice> : null}
      {row ? (
        <Balance row={row} kind={kind} isJudged={written.isEnough} choices={props.choices} />
      ) : (
        <Empty>Nothing of this player’s {words.kinds[kind].toLowerCase()} is written down yet.</Empty>
      )}
      {weeks.length > 0 ? (
        <section>
          <SectionTitle>Week by week</SectionTitle>
          <PlayerWeeksChart weeks={weeks} kind={kind} />
        </section>
      ) : null}
      {written.isEnough && gaps.some(({ points }) => points.length > 1) ? (
        <section>
          <SectionTitle note="After each session that is written down. The pale band is about even; below the line is less than an even share, above it more.">
            Running difference
          </SectionTitle>
          <GapLinesLive series={gaps} kind={kind}>
            <GapLines series={gaps} kind={kind} />
          </GapLinesLive>
          <GapTable series={gaps} kind={kind} />
        </section>
      ) : null}
      {props.matches.length > 0 ? (
        <PlayerMatches
          matches={props.matches}
          below={props.below}
          hrefOf={(sessionId) => paths.session(props.squad.id, { sessionId })}
        />
      ) : null}
      {kind === 'practice' && row ? <PracticeOnly {...props} /> : null}
      {attendance.length > 0 ? (
        <section>
          <SectionTitle>Attendance</SectionTitle>
          <AttendanceList days={attendance} kind={kind} />
        </section>
      ) : null}
      {agreed.length > 0 ? (
        <section>
          <SectionTitle note="No reason is kept.">Agreed with the family</SectionTitle>
          <AgreedList agreed={agreed} />
        </section>
      ) : null}
    </>
  )
}

type BalanceProps = {
  readonly row: BookRow
  readonly kind: 'practice' | 'match'
  readonly isJudged: boolean
  readonly choices: PlayerBodyProps['choices']
}

function Balance({ row, kind, isJudged, choices }: BalanceProps) {
  const notes = [passedSentence(row.passed), choices && choiceSentence(choices)].filter(
    (note) => note !== null,
  )
  return (
    <section>
      <SectionTitle>Balance</SectionTitle>
      <BookTable
        caption={`${row.player.name}: roles`}
        rows={[row]}
        kind={kind}
        spanSeconds={balanceSpanSeconds(row.figures.map(({ figure }) => figure))}
        isJudged={isJudged}
        hrefOf={() => null}
      />
      {notes.map((note) => (
        <p key={note} className="mt-2 max-w-prose text-sm">
          {note}
        </p>
      ))}
    </section>
  )
}

function PracticeOnly({ situations, themes, written }: PlayerBodyProps) {
  return (
    <>
      <section>
        <SectionTitle note="Attack and defence together, by the numbers the player’s own side had.">
          Numbers
        </SectionTitle>
        <SituationsTable
          figures={situations}
          spanSeconds={balanceSpanSeconds(situations.map(({ figure }) => figure))}
          isJudged={written.isEnough}
        />
      </section>
      <section>
        <SectionTitle note="Of the practices since the player joined.">Themes</SectionTitle>
        {themes.length > 0 ? (
          <ThemesMet meetings={themes} />
        ) : (
          <Empty>No practice with a theme is written down yet.</Empty>
        )}
      </section>
    </>
  )
}
