'use client'

import { useState } from 'react'
import type { AreaEnding } from '#pitch/pitch-event'
import type { DesignRound, Ending } from '#practice/design'
import type { Station } from '#practice/turn'
import { capital } from '#ui/capital'
import { type Cast, sideOfRole } from '#ui/pitch/cast'
import { pointsOf } from '#ui/pitch/choice-size'
import { PitchButton } from '#ui/pitch/pitch-button'
import { Sheet } from '#ui/pitch/sheet'
import { counted } from '#ui/plural'
import { words } from '#ui/words'

type EndingSheetProps = {
  readonly round: DesignRound
  /** The size that was chosen for the turn; null: none. */
  readonly size: number | null
  readonly stations: readonly Station[]
  readonly cast: Cast
  readonly onEndings: (endings: readonly AreaEnding[]) => void
  readonly onClose: () => void
}

/** How the ball ended, area by area. It is over already: this can be left out. */
export function EndingSheet({ round, size, stations, cast, onEndings, onClose }: EndingSheetProps) {
  const [said, setSaid] = useState<ReadonlyMap<number, Ending | null>>(new Map())
  const endingOf = (station: number, ending: Ending | null): AreaEnding => {
    const at = stations[station]
    if (ending === null || !at) return { station, endingId: null, points: 0, side: null }
    const side = sideOfRole(at, ending.side, cast) ?? ending.side
    return { station, endingId: ending.id, points: pointsOf(ending, round, size), side }
  }
  const say = (station: number, ending: Ending | null) => {
    const next = new Map(said).set(station, ending)
    if (stations.some((_, index) => !next.has(index))) return setSaid(next)
    onEndings([...next].map(([index, one]) => endingOf(index, one)))
    onClose()
  }
  return (
    <Sheet title="How did it end?" onClose={onClose}>
      {areasOf(stations).map(({ title, station }) => (
        <fieldset key={title} className="space-y-2">
          {stations.length > 1 ? <legend className="text-lg font-bold">{title}</legend> : null}
          {[...(round.endings ?? []), null].map((ending) => (
            <PitchButton
              key={ending?.id ?? 'nothing'}
              aria-pressed={said.has(station) && said.get(station) === ending}
              className="w-full text-left aria-pressed:bg-ink aria-pressed:text-white"
              onClick={() => say(station, ending)}
            >
              {ending === null ? 'Nothing' : endingWords(ending, pointsOf(ending, round, size))}
            </PitchButton>
          ))}
        </fieldset>
      ))}
    </Sheet>
  )
}

function areasOf(stations: readonly Station[]) {
  return stations.map((_, station) => ({ title: `${capital(words.area.one)} ${station + 1}`, station }))
}

function endingWords({ words: said, side }: Ending, points: number): string {
  return points === 0 ? said : `${said}: ${counted(points, 'point')} to ${words.role[side].toLowerCase()}`
}
