'use client'

import { secondsInMinute } from '#common/time'
import type { Period } from '#match/match'
import { MinuteField } from '#ui/entry/minute-field'
import { Stepper } from '#ui/entry/stepper'

type PeriodsPartProps = {
  readonly periods: readonly Period[]
  readonly onPeriods: (periods: readonly Period[]) => void
}

const breakSeconds = 5 * secondsInMinute

/** When each period began and ended, in minutes from the first kick-off, breaks included. */
export function PeriodsPart({ periods, onPeriods }: PeriodsPartProps) {
  const setCount = (count: number) => {
    const last = periods.at(-1) ?? { start: 0, end: 25 * secondsInMinute }
    const length = last.end - last.start
    const next = { start: last.end + breakSeconds, end: last.end + breakSeconds + length }
    onPeriods(
      count > periods.length ? [...periods, periods.length === 0 ? last : next] : periods.slice(0, count),
    )
  }
  const change = (at: number, part: Partial<Period>) =>
    onPeriods(periods.map((period, index) => (index === at ? { ...period, ...part } : period)))
  return (
    <fieldset className="space-y-2">
      <legend className="sr-only">Periods</legend>
      <Stepper label="Periods" value={periods.length} least={1} most={8} onChange={setCount} />
      <ul className="flex flex-wrap gap-x-6 gap-y-2">
        {periods.map((period, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: periods are only ever added and taken away at the end
          <li key={index} className="flex gap-2">
            <MinuteField
              label={`Period ${index + 1}: from`}
              seconds={period.start}
              onChange={(start) => change(index, { start: start ?? 0 })}
            />
            <MinuteField
              label="to"
              seconds={period.end}
              onChange={(end) => end !== null && change(index, { end })}
            />
          </li>
        ))}
      </ul>
    </fieldset>
  )
}
