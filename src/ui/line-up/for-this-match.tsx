'use client'

import type { PickablePlayer } from '#lineup/draft/pickable-player'
import type { MatchPlanPlayer } from '#lineup/match-plan'
import { periodStarts } from '#lineup/problem-of-match'
import type { MatchFormat } from '#match/format/match-format'
import { Stepper } from '#ui/entry/stepper'
import { Toggle } from '#ui/entry/toggle'
import { wholeMinutes } from '#ui/figures/minutes'
import { periodWords } from '#ui/line-up/period-words'
import { CheckBox } from '#ui/page/check-box'

/** What is special about a player's match, short; empty: nothing. */
export function thisMatchWords({ from, to, keeps }: MatchPlanPlayer, known: PickablePlayer): string {
  return [
    from > 0 ? `from minute ${wholeMinutes(from)}` : '',
    to === null ? '' : `to minute ${wholeMinutes(to)}`,
    known.keeps && !keeps ? 'not in goal' : '',
  ]
    .filter(Boolean)
    .join(', ')
}

/** What holds for one player in this match alone. Minutes are playing time: breaks are left out. */
export function ForThisMatch({
  player,
  known,
  format,
  onChange,
}: {
  readonly player: MatchPlanPlayer
  readonly known: PickablePlayer
  readonly format: Pick<MatchFormat, 'periodSeconds' | 'isShortGames'>
  readonly onChange: (change: Partial<Pick<MatchPlanPlayer, 'from' | 'to' | 'keeps'>>) => void
}) {
  const starts = periodStarts(format.periodSeconds)
  const whole = format.periodSeconds.reduce((sum, seconds) => sum + seconds, 0)
  const lastMinute = Math.floor(whole / 60)
  const to = player.to ?? whole
  return (
    <div className="space-y-3 border-l-4 border-rule-strong py-2 pl-3">
      <Toggle
        label={`${known.name} comes`}
        options={starts.map((start, period) => ({
          value: String(start),
          label: period === 0 ? 'From the start' : `For the ${periodWords(format, period)}`,
        }))}
        value={String(player.from)}
        onChange={(from) => onChange({ from: Number(from), ...(Number(from) < to ? {} : { to: null }) })}
      />
      <div className="flex flex-wrap gap-x-6 gap-y-2">
        <Stepper
          label="There from minute"
          value={Math.round(player.from / 60)}
          least={0}
          most={Math.max(0, Math.ceil(to / 60) - 1)}
          onChange={(minute) => onChange({ from: minute * 60 })}
        />
        <Stepper
          label="There to minute"
          value={Math.round(to / 60)}
          least={Math.floor(player.from / 60) + 1}
          most={lastMinute}
          onChange={(minute) => onChange({ to: minute >= lastMinute ? null : minute * 60 })}
        />
      </div>
      {known.keeps ? (
        <CheckBox
          label="Not in goal in this match"
          isTicked={!player.keeps}
          onChange={(isOut) => onChange({ keeps: !isOut })}
        />
      ) : null}
      <p className="text-sm text-soft">
        Minutes of play, breaks left out. Who comes in between plays from the next time for changes on. For
        this match only; no reason is kept.
      </p>
    </div>
  )
}
