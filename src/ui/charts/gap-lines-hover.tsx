'use client'

import { useEffect } from 'react'
import {
  Area,
  ComposedChart,
  Line,
  ReferenceLine,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts'
import { type GapSeries, gapSpanMinutes } from '#ui/charts/gap-lines'
import { judgedDifferenceText, signedMinutes } from '#ui/figures/difference'
import { wholeMinutes } from '#ui/figures/minutes'
import { RoleMark } from '#ui/figures/role-mark'
import { formatDay } from '#ui/format-day'

type GapLinesHoverProps = {
  readonly series: readonly GapSeries[]
  readonly kind: 'practice' | 'match'
  readonly onReady: () => void
}

/** The running differences, each day told under the pointer in all four drawings at once. */
export function GapLinesHover({ series, kind, onReady }: GapLinesHoverProps) {
  useEffect(onReady, [onReady])
  const span = gapSpanMinutes(series)
  return (
    <div className="grid gap-x-6 gap-y-4 sm:grid-cols-2 xl:grid-cols-4">
      {series.map(({ role, points }) => (
        <figure key={role}>
          <figcaption className="text-sm">
            <RoleMark role={role} kind={kind} />
          </figcaption>
          <div className="mt-1 h-36 w-full max-w-md">
            <ResponsiveContainer>
              <ComposedChart
                data={points.map(pointOnChart)}
                syncId="gap-lines"
                margin={{ top: 6, right: 8, bottom: 6 }}
              >
                <XAxis dataKey="index" tick={false} height={8} stroke="var(--color-rule-strong)" />
                <YAxis
                  width={40}
                  domain={[-span, span]}
                  ticks={[-span, 0, span]}
                  tickFormatter={signedMinutes}
                  fontSize={11}
                  interval={0}
                />
                <Area
                  dataKey="band"
                  activeDot={false}
                  stroke="none"
                  fill="var(--color-band)"
                  fillOpacity={1}
                  isAnimationActive={false}
                />
                <ReferenceLine y={0} stroke="var(--color-ink)" />
                <Line
                  dataKey="minutes"
                  stroke="var(--color-accent)"
                  strokeWidth={2}
                  dot={false}
                  isAnimationActive={false}
                />
                <Tooltip content={PointNote} />
              </ComposedChart>
            </ResponsiveContainer>
          </div>
        </figure>
      ))}
    </div>
  )
}

type ChartPoint = {
  readonly index: number
  readonly day: string
  readonly minutes: number
  readonly band: readonly [number, number]
}

function pointOnChart(point: GapSeries['points'][number], index: number): ChartPoint {
  const tolerance = point.toleranceSeconds / 60
  return { index, day: point.day, minutes: point.gapSeconds / 60, band: [-tolerance, tolerance] }
}

type PointNoteProps = {
  readonly active?: boolean
  readonly payload?: readonly { readonly payload?: ChartPoint }[]
}

function PointNote({ active, payload }: PointNoteProps) {
  const point = payload?.[0]?.payload
  if (!active || !point) return null
  const isWithin = Math.abs(point.minutes) <= point.band[1]
  const status = isWithin ? 'within' : point.minutes < 0 ? 'short' : 'over'
  return (
    <div className="border border-rule-strong bg-leaf px-2 py-1 text-sm">
      <div className="text-soft">{formatDay(point.day)}</div>
      <div>{judgedDifferenceText(wholeMinutes(point.minutes * 60), status)}</div>
    </div>
  )
}
