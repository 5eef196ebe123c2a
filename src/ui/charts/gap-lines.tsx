import type { Day } from '#common/time'
import type { Role } from '#exposure/column'
import { ChartTable } from '#ui/charts/chart-table'
import { roundStep } from '#ui/charts/scale'
import { signedMinutes } from '#ui/figures/difference'
import { wholeMinutes } from '#ui/figures/minutes'
import { RoleMark } from '#ui/figures/role-mark'
import { formatDay } from '#ui/format-day'
import { roleWord } from '#ui/words'

/** Where a player stood after a session: the running difference and the band as it was then. */
export type GapPoint = { readonly day: Day; readonly gapSeconds: number; readonly toleranceSeconds: number }

export type GapSeries = { readonly role: Role; readonly points: readonly GapPoint[] }

type GapLinesProps = { readonly series: readonly GapSeries[]; readonly kind: 'practice' | 'match' }

const width = 320
const height = 130
const left = 34
const bottom = 18

/** A small drawing for each role, all on one scale: the line of an even share, the band about it, and the running difference. */
export function GapLines({ series, kind }: GapLinesProps) {
  const span = gapSpanMinutes(series)
  return (
    <div className="grid gap-x-6 gap-y-4 sm:grid-cols-2 xl:grid-cols-4">
      {series.map((one) => (
        <GapLine key={one.role} series={one} kind={kind} span={span} />
      ))}
    </div>
  )
}

/** Half the height of every drawing in minutes, a round number. */
export function gapSpanMinutes(series: readonly GapSeries[]): number {
  const farthest = series.flatMap(({ points }) =>
    points.map((point) => Math.max(Math.abs(point.gapSeconds), point.toleranceSeconds) / 60),
  )
  const top = Math.max(5, ...farthest)
  const step = roundStep(top / 3)
  return Math.ceil(top / step) * step
}

type GapLineProps = { readonly series: GapSeries; readonly kind: 'practice' | 'match'; readonly span: number }

function GapLine({ series: { role, points }, kind, span }: GapLineProps) {
  const middle = (height - bottom) / 2
  const x = (index: number) =>
    left + (points.length > 1 ? index / (points.length - 1) : 0.5) * (width - left - 8)
  const y = (seconds: number) => middle - (seconds / 60 / span) * (middle - 4)
  const path = (values: readonly number[]) => values.map((value, index) => `${x(index)},${y(value)}`)
  const band = [
    ...path(points.map((point) => point.toleranceSeconds)),
    ...path(points.map((point) => -point.toleranceSeconds)).reverse(),
  ]
  const last = points.at(-1)
  const name = `${roleWord(role, kind)}: running difference from an even share, now ${signedMinutes(wholeMinutes(last?.gapSeconds ?? 0))} min`
  return (
    <figure>
      <figcaption className="text-sm">
        <RoleMark role={role} kind={kind} />
      </figcaption>
      <svg
        viewBox={`0 0 ${width} ${height}`}
        className="mt-1 block w-full max-w-md"
        role="img"
        aria-label={name}
      >
        <polygon points={band.join(' ')} fill="var(--color-band)" />
        {[span, 0, -span].map((minutes) => (
          <g key={minutes}>
            <line
              x1={left}
              x2={width}
              y1={y(minutes * 60)}
              y2={y(minutes * 60)}
              stroke={minutes === 0 ? 'var(--color-ink)' : 'var(--color-rule)'}
            />
            <text
              x={left - 5}
              y={y(minutes * 60) + 4}
              textAnchor="end"
              fontSize="11"
              fill="var(--color-soft)"
            >
              {signedMinutes(minutes)}
            </text>
          </g>
        ))}
        <polyline
          points={path(points.map((point) => point.gapSeconds)).join(' ')}
          fill="none"
          stroke="var(--color-accent)"
          strokeWidth={2}
        />
        {last ? (
          <circle cx={x(points.length - 1)} cy={y(last.gapSeconds)} r={4} fill="var(--color-accent)" />
        ) : null}
        {points.length > 1 ? <DayMarks points={points} x={x} /> : null}
      </svg>
    </figure>
  )
}

function DayMarks({
  points,
  x,
}: {
  readonly points: readonly GapPoint[]
  readonly x: (index: number) => number
}) {
  const ends = [
    { index: 0, anchor: 'start' as const },
    { index: points.length - 1, anchor: 'end' as const },
  ]
  return ends.map(({ index, anchor }) => (
    <text key={anchor} x={x(index)} y={height - 3} textAnchor={anchor} fontSize="11" fill="var(--color-soft)">
      {formatDay(points[index]?.day ?? '', 'short')}
    </text>
  ))
}

/** All series as one table, a row for each session. */
export function GapTable({ series, kind }: GapLinesProps) {
  const days = series[0]?.points ?? []
  return (
    <ChartTable
      caption="Running difference from an even share after each session, in minutes"
      head={[
        { key: 'day', label: 'After' },
        ...series.map(({ role }) => ({ key: role, label: roleWord(role, kind), isFigure: true })),
      ]}
    >
      {days.map(({ day }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a day can hold two sessions, their order is fixed
        <tr key={`${day} ${index}`}>
          <th scope="row">{formatDay(day)}</th>
          {series.map(({ role, points }) => (
            <td key={role} className="figure">
              {signedMinutes(wholeMinutes(points[index]?.gapSeconds ?? 0))}
            </td>
          ))}
        </tr>
      ))}
    </ChartTable>
  )
}
