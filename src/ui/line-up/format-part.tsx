'use client'

import type { Problem } from '#common/problem'
import { withDayFormat, withFormat, withPlaces } from '#lineup/draft/change-match-request'
import { shapeName } from '#lineup/draft/places-of-format'
import { plainFormat } from '#lineup/draft/plain-format'
import type { MatchPlanRequest } from '#lineup/match-plan'
import { formatLimits } from '#match/format/format-limits'
import { type FieldLine, fieldLines } from '#match/format/line-wish'
import type { LinePlaces, MatchFormat } from '#match/format/match-format'
import { placesInAll } from '#match/format/places-in-all'
import { Stepper } from '#ui/entry/stepper'
import { Toggle } from '#ui/entry/toggle'
import { wholeMinutes } from '#ui/figures/minutes'
import { BesideField } from '#ui/line-up/beside-field'
import type { AskLineUp } from '#ui/line-up/line-up-types'
import { CheckBox } from '#ui/page/check-box'
import { Select } from '#ui/page/select'

const [fewest, most] = formatLimits.aSide

const lineWords: Readonly<Record<FieldLine, string>> = { back: 'Back', middle: 'Middle', forward: 'Forward' }

/** How the match is played: the squad's format, with what is different on this day. */
export function FormatPart({
  request,
  formats,
  policyShare,
  problems,
  onAsk,
}: {
  readonly request: MatchPlanRequest
  /** The club's own. */
  readonly formats: readonly MatchFormat[]
  readonly policyShare: number
  readonly problems: readonly Problem[]
  readonly onAsk: AskLineUp
}) {
  const { format, places } = request
  const choices = [
    ...formats,
    ...(formats.some(({ name }) => name === plainFormat.name) ? [] : [plainFormat]),
  ]
  const isListed = choices.some(({ name }) => name === format.name)
  const setPlaces = (change: Partial<LinePlaces>) => onAsk((now) => withPlaces(now, { ...places, ...change }))
  const room = most - placesInAll(places)
  const spare = placesInAll(places) - fewest
  const periods = format.periodSeconds
  const setPeriods = (count: number, seconds: number) =>
    onAsk((now) => withDayFormat(now, { periodSeconds: Array.from({ length: count }, () => seconds) }))
  return (
    <div className="space-y-4">
      <div className="max-w-md">
        <Select
          name="format"
          label="Format"
          value={format.name}
          options={[
            ...(isListed ? [] : [{ value: format.name, label: `${format.name}, as planned` }]),
            ...choices.map(({ name, source }) => ({
              value: name,
              label: source ? `${name} (${source.body})` : name,
            })),
          ]}
          onChange={(event) => {
            const chosen = choices.find(({ name }) => name === event.target.value)
            if (chosen) onAsk((now) => withFormat(now, { format: chosen, policyShare }))
          }}
        />
        <p className="text-sm text-soft">{sourceWords(format)}</p>
      </div>
      <div className="flex flex-wrap gap-x-6 gap-y-3">
        <Stepper
          label={format.isShortGames ? 'Games' : 'Periods'}
          value={periods.length}
          least={1}
          most={formatLimits.periods}
          onChange={(count) => setPeriods(count, periods[0] ?? 60)}
        />
        <Stepper
          label="Minutes each"
          value={wholeMinutes(periods[0] ?? 0)}
          least={1}
          most={60}
          onChange={(minutes) => setPeriods(periods.length, minutes * 60)}
        />
        <Stepper
          label="Minutes of break"
          value={wholeMinutes(format.breakSeconds)}
          least={0}
          most={60}
          onChange={(minutes) => onAsk((now) => withDayFormat(now, { breakSeconds: minutes * 60 }))}
        />
      </div>
      <div className="space-y-3">
        <p className="font-medium">
          {placesInAll(places)} a side{places.keeper > 0 ? ', one of them in goal' : ', nobody in goal'}
        </p>
        {format.shapes.length > 1 ? (
          <Toggle
            label="Shape"
            options={format.shapes.map((shape, index) => ({
              value: String(index),
              label: shape.name || shapeName(shape.places),
            }))}
            value={String(format.shapes.findIndex((shape) => shapeName(shape.places) === shapeName(places)))}
            onChange={(index) => {
              const shape = format.shapes[Number(index)]
              if (shape) onAsk((now) => withPlaces(now, shape.places))
            }}
          />
        ) : null}
        <div className="flex flex-wrap gap-x-6 gap-y-3">
          {fieldLines.map((line) => (
            <Stepper
              key={line}
              label={lineWords[line]}
              value={places[line]}
              least={Math.max(0, places[line] - spare)}
              most={places[line] + room}
              onChange={(count) => setPlaces({ [line]: count })}
            />
          ))}
        </div>
        <CheckBox
          label="With a goalkeeper"
          isTicked={places.keeper > 0}
          onChange={(isOn) => {
            if (isOn ? room > 0 : spare > 0) setPlaces({ keeper: isOn ? 1 : 0 })
          }}
        />
        <BesideField problems={problems} />
      </div>
    </div>
  )
}

/** Whose rules these are, and what to trust them for. */
function sourceWords({ source, note }: MatchFormat): string {
  if (!source) return note || 'No body’s rules: what your league or club asks for goes first.'
  const from = [source.body, source.season].filter(Boolean).join(', ')
  const caution = source.isFromMemory ? ' Written from memory: check it before you rely on it.' : ''
  return `By ${from}. Local rules go first.${caution}`
}
