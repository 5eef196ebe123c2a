import type { PlayerWeek } from '#fairness/book/player-weeks'
import { StackedWeeks } from '#ui/charts/stacked-weeks'
import { formatDay } from '#ui/format-day'
import { words } from '#ui/words'

type PlayerWeeksChartProps = { readonly weeks: readonly PlayerWeek[]; readonly kind: 'practice' | 'match' }

export function PlayerWeeksChart({ weeks, kind }: PlayerWeeksChartProps) {
  return (
    <StackedWeeks
      caption={`${words.kinds[kind]} week by week, in minutes`}
      kind={kind}
      weeks={weeks.map((week) => ({
        key: week.week,
        label: formatDay(week.firstDay, 'short'),
        seconds: week.seconds,
        isAsPlanned: week.written > 0 && week.asPlanned === week.written,
        notWritten: week.notWritten,
        remark: week.attendance
          .filter((attendance) => attendance !== 'here')
          .map((attendance) => words.attendance[attendance])
          .join(', '),
      }))}
    />
  )
}
